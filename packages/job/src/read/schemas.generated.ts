// Generated from schema/job/1 by `npm run generate`.
export const jobSchema: Readonly<Record<string, unknown>> = {
  "$schema": "https://json-schema.org/draft/2020-12/schema",
  "$id": "https://evenhem.example/job/1/job.schema.json",
  "title": "Job",
  "description": "One drapery job: what the workroom made, where it goes, and how it is meant to hang.",
  "type": "object",
  "required": [
    "format",
    "units",
    "job",
    "rooms"
  ],
  "properties": {
    "$schema": {
      "type": "string",
      "description": "Where an editor finds this schema."
    },
    "format": {
      "const": "evenhem-job/1",
      "description": "The name and the version of this format."
    },
    "uses": {
      "type": "object",
      "description": "The plugins that this job needs, each with the version of its part of the format.",
      "additionalProperties": {
        "type": "integer",
        "minimum": 1,
        "description": "The version of this plugin's part."
      }
    },
    "units": {
      "enum": [
        "in",
        "mm",
        "cm"
      ],
      "description": "What a length without a unit is in."
    },
    "job": {
      "$ref": "#/$defs/head",
      "description": "What is said once about the whole job."
    },
    "fabrics": {
      "type": "array",
      "description": "The fabrics of this job.",
      "items": {
        "$ref": "#/$defs/fabric"
      }
    },
    "hardware": {
      "type": "array",
      "description": "The hardware of this job: rods, tracks and what belongs to them.",
      "items": {
        "$ref": "#/$defs/hardware",
        "x-evenhem-kind": true
      }
    },
    "rooms": {
      "type": "array",
      "description": "The rooms, in walking order.",
      "items": {
        "$ref": "#/$defs/room"
      }
    },
    "found": {
      "type": "object",
      "description": "Readings already taken, by the place that they are a reading of. A reading takes the place of what was ordered; the order stays as it is.",
      "additionalProperties": {
        "$ref": "#/$defs/reading"
      }
    },
    "with": {
      "$ref": "#/$defs/with",
      "x-evenhem-with": "job",
      "description": "What plugins add to the job."
    }
  },
  "unevaluatedProperties": false,
  "$defs": {
    "id": {
      "type": "string",
      "pattern": "^[a-z0-9][a-z0-9-]{0,39}$",
      "title": "Id",
      "description": "A short name, unique in its list: small letters, digits and hyphens."
    },
    "with": {
      "type": "object",
      "title": "With",
      "description": "Parts that plugins add, by the name of the plugin.",
      "additionalProperties": {
        "type": "object"
      }
    },
    "reading": {
      "type": "object",
      "title": "Reading",
      "description": "A value read at the window.",
      "required": [
        "value"
      ],
      "properties": {
        "value": {
          "description": "The value, in the form that its place asks for."
        },
        "by": {
          "type": "string",
          "minLength": 1,
          "description": "Who read it."
        },
        "when": {
          "type": "string",
          "format": "date-time",
          "description": "When it was read."
        },
        "on": {
          "enum": [
            "finished floor",
            "carpet brushed flat",
            "subfloor"
          ],
          "description": "What the tape stood on."
        }
      },
      "unevaluatedProperties": false
    },
    "head": {
      "type": "object",
      "title": "JobHead",
      "description": "What is said once about the whole job.",
      "required": [
        "number",
        "name",
        "country"
      ],
      "properties": {
        "number": {
          "type": "string",
          "minLength": 1,
          "description": "The workroom's number of this job."
        },
        "name": {
          "type": "string",
          "minLength": 1,
          "description": "What people call this job."
        },
        "country": {
          "type": "string",
          "pattern": "^[A-Z]{2}$",
          "description": "The country of the site, two letters (ISO 3166-1). It picks the safety rules."
        },
        "customer": {
          "$ref": "#/$defs/party",
          "description": "Who ordered the draperies."
        },
        "site": {
          "$ref": "#/$defs/site",
          "description": "Where they go."
        },
        "workroom": {
          "$ref": "#/$defs/workroom",
          "description": "Who made them, and by which rules."
        },
        "measured": {
          "type": "object",
          "title": "Measured",
          "description": "Who measured for the order, and when.",
          "properties": {
            "by": {
              "type": "string",
              "minLength": 1,
              "description": "Who measured."
            },
            "date": {
              "type": "string",
              "format": "date",
              "description": "The day it was measured."
            },
            "on": {
              "enum": [
                "finished floor",
                "carpet brushed flat",
                "subfloor"
              ],
              "description": "What the tape stood on."
            }
          },
          "unevaluatedProperties": false
        },
        "install": {
          "type": "string",
          "format": "date",
          "description": "The day of the installation."
        },
        "note": {
          "type": "string",
          "description": "What whoever opens this job should know first."
        }
      },
      "unevaluatedProperties": false
    },
    "party": {
      "type": "object",
      "title": "Party",
      "description": "A person or a firm.",
      "required": [
        "name"
      ],
      "properties": {
        "name": {
          "type": "string",
          "minLength": 1,
          "description": "The name."
        },
        "phone": {
          "type": "string",
          "minLength": 1,
          "description": "The telephone number."
        },
        "email": {
          "type": "string",
          "minLength": 3,
          "description": "The e-mail address."
        }
      },
      "unevaluatedProperties": false
    },
    "site": {
      "type": "object",
      "title": "Site",
      "description": "Where the draperies go.",
      "properties": {
        "address": {
          "type": "string",
          "minLength": 1,
          "description": "The address."
        },
        "access": {
          "type": "string",
          "description": "How to get in: keys, parking, pets."
        }
      },
      "unevaluatedProperties": false
    },
    "workroom": {
      "type": "object",
      "title": "Workroom",
      "description": "Who made the draperies, and the rules they work by.",
      "required": [
        "name"
      ],
      "properties": {
        "name": {
          "type": "string",
          "minLength": 1,
          "description": "The name of the workroom."
        },
        "phone": {
          "type": "string",
          "minLength": 1,
          "description": "Whom to call from the ladder."
        },
        "email": {
          "type": "string",
          "minLength": 3,
          "description": "The e-mail address."
        },
        "rules": {
          "$ref": "#/$defs/rules",
          "description": "Where this workroom differs from the trade's defaults."
        }
      },
      "unevaluatedProperties": false
    },
    "rules": {
      "type": "object",
      "title": "Rules",
      "description": "Settings of the workroom. What is not said here is the trade's default.",
      "properties": {
        "heightsAgree": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far the two ways to the rod's height may differ. Default 1/8 in."
        },
        "returnShort": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How much narrower than the projection a return may be. Default 1/8 in."
        },
        "returnOver": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How much wider than the projection a return may be before it is looked at. Default 1 in."
        },
        "widthOff": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far a panel's first to last may differ from its place on the rod. Default 1/2 in."
        },
        "lengthOff": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far a finished length may differ from the order. Default 1/4 in."
        },
        "returnUnder": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How much narrower than ordered a return may measure. Default 1/8 in."
        },
        "returnWider": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How much wider than ordered a return may measure. Default 1/2 in."
        },
        "pinRange": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far pins can move a hem, from the shallowest to the deepest. Default 1/2 in."
        },
        "pinOff": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far pins may differ from their setting. Default 1/16 in."
        },
        "pairOff": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far the two finished lengths of a pair may differ. Default 1/8 in."
        }
      },
      "unevaluatedProperties": false
    },
    "fabric": {
      "type": "object",
      "title": "Fabric",
      "description": "A fabric of this job.",
      "required": [
        "id",
        "name"
      ],
      "properties": {
        "id": {
          "$ref": "#/$defs/id",
          "description": "The short name by which treatments use this fabric."
        },
        "name": {
          "type": "string",
          "minLength": 1,
          "description": "What people call it."
        },
        "fibres": {
          "type": "array",
          "description": "What it is made of.",
          "items": {
            "type": "object",
            "title": "Fibre",
            "description": "A fibre and its share.",
            "required": [
              "fibre"
            ],
            "properties": {
              "fibre": {
                "type": "string",
                "minLength": 1,
                "description": "The fibre."
              },
              "percent": {
                "type": "number",
                "exclusiveMinimum": 0,
                "maximum": 100,
                "description": "Its share of the weight."
              }
            },
            "unevaluatedProperties": false
          }
        },
        "lining": {
          "type": "string",
          "description": "What it is lined with; leave it out when it is not lined."
        },
        "with": {
          "$ref": "#/$defs/with",
          "x-evenhem-with": "fabric",
          "description": "What plugins add to a fabric."
        }
      },
      "unevaluatedProperties": false
    },
    "hardware": {
      "type": "object",
      "title": "Hardware",
      "description": "An entry of hardware. What else it holds depends on its kind.",
      "required": [
        "id",
        "kind",
        "name"
      ],
      "properties": {
        "id": {
          "$ref": "#/$defs/id",
          "description": "The short name by which treatments use this hardware."
        },
        "kind": {
          "type": "string",
          "pattern": "^[a-z0-9][a-z0-9-]{0,39}$",
          "description": "The sort of hardware; a plugin knows what belongs to it."
        },
        "name": {
          "type": "string",
          "minLength": 1,
          "description": "What people call it."
        }
      }
    },
    "room": {
      "type": "object",
      "title": "Room",
      "description": "A room.",
      "required": [
        "id",
        "name",
        "windows"
      ],
      "properties": {
        "id": {
          "$ref": "#/$defs/id",
          "description": "A short name, unique among the rooms."
        },
        "name": {
          "type": "string",
          "minLength": 1,
          "description": "What people call it."
        },
        "ceiling": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "5 ft",
            "most": "30 ft"
          },
          "description": "From the level line up to the ceiling."
        },
        "floor": {
          "enum": [
            "wood",
            "tile",
            "stone",
            "vinyl",
            "carpet",
            "concrete",
            "unfinished"
          ],
          "description": "What the floor is."
        },
        "windows": {
          "type": "array",
          "description": "The windows, from left to right as one walks.",
          "items": {
            "$ref": "#/$defs/window"
          }
        },
        "with": {
          "$ref": "#/$defs/with",
          "x-evenhem-with": "room",
          "description": "What plugins add to a room."
        }
      },
      "unevaluatedProperties": false
    },
    "window": {
      "type": "object",
      "title": "Window",
      "description": "What one set of treatments dresses. Lengths along the wall run to the right from the left edge of the casing; heights run up from the level line, which passes through the floor where its points say 0.",
      "required": [
        "id",
        "name",
        "walls",
        "treatments"
      ],
      "properties": {
        "id": {
          "$ref": "#/$defs/id",
          "description": "A short name, unique in the room."
        },
        "name": {
          "type": "string",
          "minLength": 1,
          "description": "What people call it."
        },
        "walls": {
          "type": "array",
          "minItems": 1,
          "maxItems": 1,
          "description": "The walls, from left to right. This version takes one.",
          "items": {
            "$ref": "#/$defs/wall"
          }
        },
        "floor": {
          "type": "array",
          "description": "Points of the floor under the window. Without any, the floor is the level line.",
          "items": {
            "$ref": "#/$defs/floorPoint"
          }
        },
        "treatments": {
          "type": "array",
          "maxItems": 1,
          "description": "What hangs here, from the glass outward. This version takes one.",
          "items": {
            "$ref": "#/$defs/treatment"
          }
        },
        "found": {
          "type": "object",
          "title": "WindowFound",
          "description": "What was found at this window that the order cannot hold.",
          "properties": {},
          "unevaluatedProperties": false
        },
        "with": {
          "$ref": "#/$defs/with",
          "x-evenhem-with": "window",
          "description": "What plugins add to a window."
        }
      },
      "unevaluatedProperties": false
    },
    "floorPoint": {
      "type": "object",
      "title": "FloorPoint",
      "description": "A point of the floor.",
      "required": [
        "id",
        "x",
        "y"
      ],
      "properties": {
        "id": {
          "$ref": "#/$defs/id",
          "description": "A short name, unique among the points."
        },
        "x": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "-100 ft",
            "most": "100 ft"
          },
          "description": "Along the wall from the left edge of the casing; to the left is negative."
        },
        "y": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "-2 ft",
            "most": "2 ft"
          },
          "description": "Above the level line; below it is negative."
        }
      },
      "unevaluatedProperties": false
    },
    "wall": {
      "type": "object",
      "title": "Wall",
      "description": "A wall with its openings.",
      "required": [
        "id",
        "openings"
      ],
      "properties": {
        "id": {
          "$ref": "#/$defs/id",
          "description": "A short name, unique in the window."
        },
        "space": {
          "type": "object",
          "title": "WallSpace",
          "description": "What is free at the height of the rod, from the casing outward.",
          "properties": {
            "left": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "0 in",
                "most": "40 ft"
              },
              "description": "Free wall to the left of the casing."
            },
            "right": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "0 in",
                "most": "40 ft"
              },
              "description": "Free wall to the right of the casing."
            }
          },
          "unevaluatedProperties": false
        },
        "buildUp": {
          "type": "object",
          "title": "BuildUp",
          "description": "What the wall is made of, from the room inward.",
          "properties": {
            "surface": {
              "enum": [
                "wallboard",
                "plaster",
                "masonry",
                "concrete",
                "wood",
                "tile"
              ],
              "description": "What the screw meets first."
            },
            "board": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1/16 in",
                "most": "12 in"
              },
              "description": "How thick that is."
            },
            "behind": {
              "enum": [
                "wood",
                "metal",
                "hollow",
                "masonry",
                "concrete",
                "unknown"
              ],
              "description": "What is behind it where the brackets go."
            }
          },
          "unevaluatedProperties": false
        },
        "baseboard": {
          "type": "object",
          "title": "Baseboard",
          "description": "The board along the floor.",
          "properties": {
            "height": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1/4 in",
                "most": "4 ft"
              },
              "description": "How high it is."
            },
            "thickness": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1/16 in",
                "most": "6 in"
              },
              "description": "How far it stands out from the wall."
            }
          },
          "unevaluatedProperties": false
        },
        "openings": {
          "type": "array",
          "minItems": 1,
          "maxItems": 1,
          "description": "The openings, from left to right. This version takes one.",
          "items": {
            "$ref": "#/$defs/opening"
          }
        }
      },
      "unevaluatedProperties": false
    },
    "opening": {
      "type": "object",
      "title": "Opening",
      "description": "A window or a door in the wall.",
      "required": [
        "id"
      ],
      "properties": {
        "id": {
          "$ref": "#/$defs/id",
          "description": "A short name, unique in the wall."
        },
        "casing": {
          "type": "object",
          "title": "Casing",
          "description": "The frame on the wall around the opening, measured outside.",
          "properties": {
            "width": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "4 in",
                "most": "40 ft"
              },
              "description": "From its left outside edge to its right outside edge."
            },
            "top": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "6 in",
                "most": "40 ft"
              },
              "description": "From the level line up to its top edge."
            },
            "bottom": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "-2 ft",
                "most": "30 ft"
              },
              "description": "From the level line up to its lowest edge; 0 for a door."
            },
            "board": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1/4 in",
                "most": "2 ft"
              },
              "description": "How wide its boards are."
            },
            "thickness": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "0 in",
                "most": "12 in"
              },
              "description": "How far it stands out from the wall."
            }
          },
          "unevaluatedProperties": false
        },
        "sill": {
          "type": "object",
          "title": "Sill",
          "description": "The stool below the sash.",
          "properties": {
            "top": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "-2 ft",
                "most": "30 ft"
              },
              "description": "From the level line up to its top."
            },
            "depth": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "0 in",
                "most": "3 ft"
              },
              "description": "How far it stands out from the wall."
            }
          },
          "unevaluatedProperties": false
        }
      },
      "unevaluatedProperties": false
    },
    "treatment": {
      "type": "object",
      "title": "Treatment",
      "description": "Draperies on one rod.",
      "required": [
        "id",
        "hardware",
        "draw",
        "panels"
      ],
      "properties": {
        "id": {
          "$ref": "#/$defs/id",
          "description": "A short name, unique in the window."
        },
        "hardware": {
          "$ref": "#/$defs/id",
          "x-evenhem-names": "hardware",
          "description": "The entry under `hardware` that it hangs on."
        },
        "fabric": {
          "$ref": "#/$defs/id",
          "x-evenhem-names": "fabrics",
          "description": "The entry under `fabrics` that it is made of."
        },
        "draw": {
          "enum": [
            "pair"
          ],
          "description": "How it opens: a pair opens to both sides."
        },
        "rod": {
          "type": "object",
          "title": "RodOrder",
          "description": "Where the rod is meant to be.",
          "properties": {
            "width": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "6 in",
                "most": "60 ft"
              },
              "description": "What the closed drapery covers, from its left end to its right end."
            },
            "pastLeft": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "-3 ft",
                "most": "20 ft"
              },
              "description": "How far it reaches past the casing on the left. Left out: as far as on the right."
            },
            "top": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1 ft",
                "most": "40 ft"
              },
              "description": "The intended height of the top of the rod above the floor, where the floor under the drapery is highest."
            },
            "aboveCasing": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "-20 ft",
                "most": "20 ft"
              },
              "description": "The intended height of the top of the rod above the top of the casing."
            }
          },
          "unevaluatedProperties": false
        },
        "clearance": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "-2 ft",
            "most": "3 ft"
          },
          "description": "From the floor up to the hem."
        },
        "panels": {
          "type": "array",
          "minItems": 2,
          "maxItems": 2,
          "description": "The panels, from left to right. A pair has two.",
          "items": {
            "$ref": "#/$defs/panel"
          }
        },
        "found": {
          "type": "object",
          "title": "TreatmentFound",
          "description": "What was found at this treatment that the order cannot hold.",
          "properties": {},
          "unevaluatedProperties": false
        },
        "with": {
          "$ref": "#/$defs/with",
          "x-evenhem-with": "treatment",
          "description": "What plugins add to a treatment."
        }
      },
      "unevaluatedProperties": false
    },
    "panel": {
      "type": "object",
      "title": "Panel",
      "description": "One panel, as the workroom made it.",
      "required": [
        "id"
      ],
      "properties": {
        "id": {
          "$ref": "#/$defs/id",
          "description": "A short name, unique in the treatment."
        },
        "bag": {
          "type": "string",
          "minLength": 1,
          "description": "What its bag is labelled."
        },
        "finishedLength": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "6 in",
            "most": "40 ft"
          },
          "description": "From header to hem along the leading edge, the panel lying flat."
        },
        "pleats": {
          "type": "integer",
          "minimum": 2,
          "maximum": 400,
          "description": "How many pleats it has."
        },
        "firstToLast": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1 in",
            "most": "40 ft"
          },
          "description": "From the first pleat to the last pleat."
        },
        "leadingFlat": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "2 ft"
          },
          "description": "From the leading edge to the first pleat."
        },
        "return": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "3 ft"
          },
          "description": "From the last pleat to the edge at the wall; 0 when it has no return."
        },
        "flatWidth": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "3 in",
            "most": "120 ft"
          },
          "description": "The whole width of the panel before it is pleated."
        },
        "pin": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "6 in"
          },
          "description": "The pin setting: from the top of the pin up to the top of the drapery."
        },
        "heading": {
          "type": "object",
          "title": "Heading",
          "description": "The top of the panel.",
          "properties": {
            "kind": {
              "enum": [
                "pinch pleat",
                "tack pleat",
                "box pleat",
                "goblet pleat",
                "cartridge pleat"
              ],
              "description": "The kind of pleat."
            },
            "height": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1/4 in",
                "most": "2 ft"
              },
              "description": "How high the heading is."
            }
          },
          "unevaluatedProperties": false
        }
      },
      "unevaluatedProperties": false
    }
  }
}
export const lengthSchema: Readonly<Record<string, unknown>> = {
  "$schema": "https://json-schema.org/draft/2020-12/schema",
  "$id": "https://evenhem.example/job/1/length.schema.json",
  "title": "Length",
  "description": "A length as a person writes it. A number, or text without a unit, is in the job's `units`: 86.5, \"86 1/2\". Text may carry its unit: \"2197 mm\", \"219.7 cm\", \"2.197 m\", \"7 ft 2 1/2 in\", \"7' 2 1/2\\\"\".",
  "type": [
    "string",
    "number"
  ],
  "minLength": 1,
  "maxLength": 40,
  "x-evenhem-length": true
}
