// Generated from schema by `npm run generate`.
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
    "catalogues": {
      "type": "array",
      "description": "Catalogue files beside this job, from which entries of hardware and fabrics are taken.",
      "items": {
        "type": "object",
        "title": "CatalogueFile",
        "description": "A catalogue file.",
        "required": [
          "id",
          "file"
        ],
        "properties": {
          "id": {
            "$ref": "#/$defs/id",
            "description": "The short name by which entries use it."
          },
          "file": {
            "type": "string",
            "minLength": 1,
            "description": "Where it is, from the folder of this job: in it, or in the folder that holds it (`../catalogue.json`)."
          }
        },
        "unevaluatedProperties": false
      }
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
    "fasteners": {
      "type": "array",
      "description": "What brackets are fixed with on this job. The first one that fits the wall is reckoned with.",
      "items": {
        "$ref": "#/$defs/fastener"
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
        "approved": {
          "type": "object",
          "title": "Approved",
          "description": "Who approved the order before it was made, and when.",
          "properties": {
            "by": {
              "type": "string",
              "minLength": 1,
              "description": "Who approved it."
            },
            "date": {
              "type": "string",
              "format": "date",
              "description": "The day it was approved."
            }
          },
          "unevaluatedProperties": false
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
        "handOver": {
          "type": "object",
          "title": "HandOver",
          "description": "What is left with the customer, and what was agreed about it.",
          "properties": {
            "spares": {
              "type": "array",
              "description": "What is left as a spare, in words: two rings, a touch-up stick.",
              "items": {
                "type": "string",
                "minLength": 1,
                "description": "One thing that is left."
              }
            },
            "remotes": {
              "type": "integer",
              "minimum": 0,
              "maximum": 200,
              "description": "How many remote controls are handed over."
            },
            "mayUse": {
              "type": "string",
              "minLength": 1,
              "description": "Who may work the draperies, where not everybody may."
            },
            "openPoints": {
              "type": "string",
              "minLength": 1,
              "description": "Who sees to the points that are left open."
            }
          },
          "unevaluatedProperties": false
        },
        "note": {
          "type": "string",
          "description": "What whoever opens this job should know first."
        },
        "found": {
          "type": "object",
          "title": "JobFound",
          "description": "What was found of the whole job that the order cannot hold.",
          "properties": {
            "signatures": {
              "type": "object",
              "description": "Signatures, each under a name of its own: put by the log, each as one value.",
              "additionalProperties": {
                "$ref": "#/$defs/signature"
              }
            }
          },
          "unevaluatedProperties": false
        }
      },
      "unevaluatedProperties": false
    },
    "signature": {
      "title": "Signature",
      "type": "object",
      "description": "A signature under a job that is done.",
      "required": [
        "role",
        "name",
        "strokes",
        "seal"
      ],
      "properties": {
        "role": {
          "enum": [
            "customer",
            "installer"
          ],
          "description": "As whom somebody signed."
        },
        "name": {
          "type": "string",
          "minLength": 1,
          "maxLength": 200,
          "description": "The name of who signed."
        },
        "accepts": {
          "enum": [
            "without open points",
            "with open points"
          ],
          "description": "What the customer accepts. An installer's signature leaves it out."
        },
        "strokes": {
          "type": "array",
          "maxItems": 1000,
          "description": "The signature as it was drawn, a stroke after the other; empty where it was typed.",
          "items": {
            "type": "array",
            "title": "Stroke",
            "minItems": 2,
            "maxItems": 8000,
            "description": "Places of the pen: from the left, from the top, from the left, from the top, and so on.",
            "items": {
              "type": "number",
              "minimum": 0,
              "maximum": 1,
              "description": "A share of the width or the height of the field."
            }
          }
        },
        "typed": {
          "type": "boolean",
          "description": "Whether it was signed by typing the name."
        },
        "left": {
          "type": "string",
          "minLength": 1,
          "maxLength": 2000,
          "description": "What was left with the customer, in words: spares, remote controls."
        },
        "seal": {
          "$ref": "#/$defs/seal",
          "description": "What was signed, so that a change is found."
        }
      },
      "unevaluatedProperties": false
    },
    "seal": {
      "title": "Seal",
      "type": "object",
      "description": "What was there when somebody signed. Hashes are SHA-256 in small hexadecimal digits.",
      "required": [
        "job",
        "devices",
        "photos"
      ],
      "properties": {
        "job": {
          "type": "string",
          "pattern": "^[0-9a-f]{64}$",
          "description": "The hash of the bytes of job.json."
        },
        "devices": {
          "type": "object",
          "description": "The last line that was there of each device, by the device.",
          "additionalProperties": {
            "type": "object",
            "title": "SealedLine",
            "description": "A line of the log.",
            "required": [
              "n",
              "hash"
            ],
            "properties": {
              "n": {
                "type": "integer",
                "minimum": 1,
                "maximum": 9007199254740991,
                "description": "Its number."
              },
              "hash": {
                "type": "string",
                "pattern": "^[0-9a-f]{64}$",
                "description": "The hash of the line without its end."
              }
            },
            "unevaluatedProperties": false
          }
        },
        "photos": {
          "type": "string",
          "pattern": "^[0-9a-f]{64}$",
          "description": "The hash of the names of all photos that these lines name, sorted and joined by line feeds."
        },
        "signature": {
          "type": "string",
          "pattern": "^[0-9a-f]{64}$",
          "description": "The hash of all the rest of the signature as JSON without spaces, its members and those of the seal in the order of this schema."
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
        },
        "contact": {
          "$ref": "#/$defs/party",
          "description": "Who opens the door."
        },
        "yearBuilt": {
          "type": "integer",
          "minimum": 1000,
          "maximum": 2200,
          "description": "When the house was built. Paint from before 1978 may hold lead."
        },
        "public": {
          "type": "boolean",
          "description": "A public place: what people reach and what may burn follow other rules there."
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
        "longOff": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far a finished length over 108 in may differ from the order. Default twice `lengthOff`."
        },
        "openingOff": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far an opening may measure otherwise than the order says before it is looked at. Default 1/8 in."
        },
        "pinsPair": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far the pins of the panels of a pair may be set apart. Default what `pairOff` is."
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
        },
        "obstacleGap": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How near an obstacle that names no distance of its own hardware and cloth may come. Default 0."
        },
        "heaterGap": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "4 ft"
          },
          "description": "How far hem and cloth keep from a hydronic heater that names no distance of its own. Default 6 in."
        },
        "stoolGap": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far the cloth must pass in front of a stool that it hangs past. Default 1 in."
        },
        "bracketEdge": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far a bracket's plate must keep from the edge of a casing, wholly on it or wholly off it. Default 0."
        },
        "liftIn": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How much must be free above the rod to lift it into its brackets. Default 3/8 in."
        },
        "spaceMost": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "Spaces between pleats that are wider than this are looked at. Default 5 in."
        },
        "spacesAgree": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far the spaces of the two panels of a pair may differ. Default 1/4 in."
        },
        "roomHeights": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far rods and hems of one room may differ. Default 1/8 in."
        },
        "splicePlace": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far from the middle of a support a splice may be. Default 2 in."
        },
        "sagOf": {
          "type": "integer",
          "minimum": 50,
          "maximum": 2000,
          "description": "The largest sag of a rod between two brackets, as a part of the way between them: 240 is one part in 240. No published limit for rods is known. Default 240, a choice of ours."
        },
        "ladderHeight": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "3 ft",
            "most": "40 ft"
          },
          "description": "Work above this height takes two people or a tower. Default 10 ft."
        },
        "pinLeast": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "The shallowest pin setting. Default 1/4 in."
        },
        "pinMost": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "The deepest pin setting. Default 3/4 in."
        },
        "hemEven": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far a hem may hang from where it was ordered, at any place. Default 1/8 in."
        },
        "pinStep": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/64 in",
            "most": "1 in"
          },
          "description": "In which steps pins are set again; half of it is taken when only that brings a hem inside its tolerance. Default 1/8 in."
        },
        "pinsNext": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far the pins of two neighbouring hooks may differ. Default 1/8 in."
        },
        "pinsMeet": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far the pins of the two leading edges of a pair may differ. Default 1/16 in."
        },
        "pinBelow": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How much of the heading stays below the deepest pin. Default 1/2 in."
        },
        "holeBeside": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far a bracket moves at least, so that new screws hold beside the old holes. Default 3/8 in."
        },
        "anchorHole": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How wide the hole of an anchor is. Default 1/2 in."
        },
        "anchorBeside": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far a bracket in anchors moves at least, beyond the hole of an anchor. Default 1/4 in."
        },
        "supportInLine": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far a support may be off the line of the rod between the end brackets. Default 1/16 in."
        },
        "lookAgainAfter": {
          "type": "integer",
          "minimum": 1,
          "maximum": 365,
          "description": "After how many days somebody comes back to read the hem of cloth that settles. Default 14."
        },
        "layerGap": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far the inner layer keeps from the outer one. Default 2 in."
        },
        "foldFree": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far folds that go back keep from the wall. Default 1/2 in."
        },
        "hemAboveLeast": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How much higher than the layer in front of it the hem of an unlined layer must be at least, so that it does not show below. Default 1/4 in."
        },
        "hemAboveMost": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How much higher than the layer in front of it the hem of an unlined layer may be. Default 1/2 in."
        },
        "stackBy": {
          "enum": [
            "a third of the rod",
            "a third of the window",
            "a fifth of the window",
            "half of the window",
            "of the window by lining",
            "a third of the glass",
            "three tenths of the glass"
          ],
          "description": "How wide an open drapery stacks, both sides of a pair together, before it is measured: a part of the rod that it covers, of the casing's width or of the glass that is seen; by lining 10 % unlined, 15 % lined, 20 % blackout-lined, 25 % interlined. Never less than its rings or carriers side by side. Published rules differ fivefold. Default a third of the rod."
        },
        "eyeReach": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "4 ft"
          },
          "description": "How near to the rod a line must be for an eye to compare the two. Default 12 in."
        },
        "rodLevel": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 in"
          },
          "description": "How far a rod may be out of level in 6 ft before it is looked at. Default 1/2 in."
        },
        "markOff": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "2 in"
          },
          "description": "How far a fixed bracket may be from its mark. Default 1/16 in."
        },
        "fullnessOf": {
          "enum": [
            "finished width",
            "covered width"
          ],
          "description": "What fullness multiplies: the whole finished width, returns and overlap with it, or only what the panel covers, its return being added as it is. Published sources differ. Default finished width."
        },
        "percentMeans": {
          "enum": [
            "of the width",
            "beyond the width"
          ],
          "description": "What fullness in per cent means: 200 per cent of the width is twice as much cloth, 200 per cent beyond it three times. Published sources differ. Default of the width."
        },
        "widthsRounded": {
          "enum": [
            "up",
            "half up",
            "nearest"
          ],
          "description": "How a number of fabric widths is rounded: up to a whole width, up to a half width, or to the nearest whole width. Published sources differ. Default up."
        },
        "widthsOf": {
          "enum": [
            "each panel",
            "all panels"
          ],
          "description": "Whether widths are rounded for each panel alone or once for all panels of a treatment, which then share one. Published sources differ. Default each panel."
        },
        "repeatOf": {
          "enum": [
            "cut length",
            "finished length"
          ],
          "description": "Which length must be a whole number of repeats: the cut length with its allowances, or the finished length, whose rest then gives the hems. Published sources differ. Default cut length."
        },
        "repeatBy": {
          "enum": [
            "whole repeats",
            "one repeat a cut"
          ],
          "description": "How a repeat lengthens a cut: up to a whole number of repeats, or by one repeat whatever the length. Default whole repeats."
        },
        "halfDrop": {
          "enum": [
            "half a repeat once",
            "one repeat once",
            "half a repeat on alternate cuts"
          ],
          "description": "What a half-drop match adds: half a repeat once where the rest of a cut is less than that, one repeat once, or half a repeat on every second cut. Published sources differ. Default half a repeat once."
        },
        "placing": {
          "enum": [
            "nothing",
            "one repeat",
            "a yard or a repeat"
          ],
          "description": "What is added once to the order of a fabric with a repeat, for placing its pattern; of a yard and a repeat the longer. Published sources differ. Default nothing."
        },
        "soldBy": {
          "enum": [
            "any length",
            "quarter yard",
            "third of a yard",
            "half yard",
            "yard",
            "half metre",
            "metre"
          ],
          "description": "The step in which suppliers sell cloth: an order is rounded up to it. Default any length."
        },
        "hemTurns": {
          "type": "integer",
          "minimum": 1,
          "maximum": 3,
          "description": "How many layers of cloth the bottom hem takes: 2 for a double hem. Default 2."
        },
        "headingTurns": {
          "type": "integer",
          "minimum": 1,
          "maximum": 3,
          "description": "How many times its height the heading takes of the cloth: 2 when it is turned over the stiffening and under. Default 2."
        },
        "sideHemTurns": {
          "type": "integer",
          "minimum": 1,
          "maximum": 3,
          "description": "How many layers of cloth a side hem takes. Default 2."
        },
        "seam": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "3 in"
          },
          "description": "What a joining seam takes off each edge of a width. Default 1/2 in."
        },
        "cutExtra": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "24 in"
          },
          "description": "What is cut longer than finished length, hem and heading, to work with. Default 0."
        },
        "liningShorter": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "24 in"
          },
          "description": "How much shorter than the fabric the lining is cut. Default 3 in."
        },
        "liningNarrower": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "24 in"
          },
          "description": "How much narrower than the fabric the lining of a panel is cut. Default 0."
        },
        "interliningShorter": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "24 in"
          },
          "description": "How much shorter than the fabric the interlining is cut. Default 0."
        },
        "interliningNarrower": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "24 in"
          },
          "description": "How much narrower than the fabric the interlining of a panel is cut. Default 0."
        },
        "flatShort": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "24 in"
          },
          "description": "How much narrower than its fullness asks for a panel's flat width may be before it is looked at. Default 2 in."
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
        "interlining": {
          "type": "string",
          "minLength": 1,
          "description": "What lies between fabric and lining; leave it out when nothing does."
        },
        "weight": {
          "type": "string",
          "pattern": "^[0-9]+(\\.[0-9]+)? ?(g/m2|g/m²|oz/yd2|oz/yd²)$",
          "description": "What it weighs by its area, such as `320 g/m2` or `9.5 oz/yd2`."
        },
        "width": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "10 in",
            "most": "14 ft"
          },
          "description": "From selvedge to selvedge. With it the cloth of this job is counted."
        },
        "soldBy": {
          "enum": [
            "any length",
            "quarter yard",
            "third of a yard",
            "half yard",
            "yard",
            "half metre",
            "metre"
          ],
          "description": "The step in which this fabric is sold. Left out: what the workroom's rule says."
        },
        "settling": {
          "type": "number",
          "minimum": 0,
          "maximum": 25,
          "description": "By how many per cent the cloth grows longer once it hangs."
        },
        "repeat": {
          "type": "object",
          "title": "Repeat",
          "description": "The repeat of the pattern.",
          "properties": {
            "vertical": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1/16 in",
                "most": "12 ft"
              },
              "description": "From one motif to the next, upward."
            },
            "horizontal": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1/16 in",
                "most": "12 ft"
              },
              "description": "From one motif to the next, sideways."
            },
            "received": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1/16 in",
                "most": "12 ft"
              },
              "description": "The upward repeat of the cloth that came, where it was measured."
            },
            "match": {
              "enum": [
                "straight",
                "half drop"
              ],
              "description": "How motifs meet from one width to the next: at one height, or half a repeat lower. Default straight."
            }
          },
          "unevaluatedProperties": false
        },
        "lot": {
          "type": "string",
          "minLength": 1,
          "description": "The dye lot or batch."
        },
        "certificate": {
          "type": "string",
          "minLength": 1,
          "description": "The certificate that it came with, for instance of how it burns."
        },
        "catalogue": {
          "$ref": "#/$defs/catalogued",
          "description": "Where this entry was taken from."
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
        },
        "catalogue": {
          "$ref": "#/$defs/catalogued",
          "description": "Where this entry was taken from."
        }
      }
    },
    "catalogued": {
      "type": "object",
      "title": "Catalogue",
      "description": "Where this entry was taken from. With a catalogue of this job and without members of its own the entry is what the catalogue says; with members of its own it is a frozen copy, which wins.",
      "properties": {
        "name": {
          "type": "string",
          "minLength": 1,
          "description": "The name of the catalogue."
        },
        "from": {
          "$ref": "#/$defs/id",
          "description": "The catalogue of this job that holds it, by its short name under `catalogues`."
        },
        "item": {
          "type": "string",
          "minLength": 1,
          "description": "The number or name of the item in it; of a catalogue of this job its id there. Left out: the id is the same."
        },
        "date": {
          "type": "string",
          "format": "date",
          "description": "The day of the catalogue."
        }
      },
      "unevaluatedProperties": false
    },
    "plate": {
      "type": "object",
      "title": "Plate",
      "description": "A plate that is screwed on.",
      "properties": {
        "top": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "-12 in",
            "most": "12 in"
          },
          "description": "The top of the plate against the top of the rod: below it is negative."
        },
        "width": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/32 in",
            "most": "12 in"
          },
          "description": "How wide the plate is."
        },
        "height": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/4 in",
            "most": "18 in"
          },
          "description": "How high the plate is."
        },
        "holes": {
          "type": "array",
          "minItems": 1,
          "description": "The holes of the plate, from the top down, all on its middle line.",
          "items": {
            "$ref": "#/$defs/plateHole"
          }
        },
        "screw": {
          "type": "string",
          "minLength": 1,
          "description": "The screw that its maker asks for."
        },
        "thickness": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/64 in",
            "most": "2 in"
          },
          "description": "How thick the plate is, through which the screw goes before it reaches the wall. Left out: 1/8 in is reckoned."
        },
        "rated": {
          "type": "string",
          "pattern": "^[0-9]+(\\.[0-9]+)? ?(kg|g|lb|oz)$",
          "description": "What its maker lets one of them carry, such as `9 kg` or `20 lb`."
        },
        "holdsDown": {
          "type": "boolean",
          "description": "Whether it holds the rod down too, by a screw or a clip. Left out: an open saddle, out of which the rod can lift."
        }
      }
    },
    "secondRod": {
      "type": "object",
      "title": "SecondRod",
      "description": "Where a double bracket carries a second rod, behind its own.",
      "required": [
        "top",
        "projection"
      ],
      "properties": {
        "top": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "-12 in",
            "most": "12 in"
          },
          "description": "The top of the second rod against the top of the first: below it is negative."
        },
        "projection": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/2 in",
            "most": "24 in"
          },
          "description": "From the wall to where the hooks on the second rod bear."
        }
      },
      "unevaluatedProperties": false
    },
    "section": {
      "type": "object",
      "title": "Section",
      "description": "The section of a rod that is the same all around its length: solid or a tube. A rod with a slot is none of these.",
      "required": [
        "shape",
        "height"
      ],
      "properties": {
        "shape": {
          "enum": [
            "round",
            "square",
            "rectangle"
          ],
          "description": "Its outline."
        },
        "height": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/8 in",
            "most": "8 in"
          },
          "description": "How high it is, seen from the room; of a round one its diameter."
        },
        "width": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/8 in",
            "most": "8 in"
          },
          "description": "How deep a rectangle is, from the wall outward."
        },
        "wall": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/64 in",
            "most": "2 in"
          },
          "description": "How thick its wall is, when it is a tube. Left out: it is solid."
        }
      },
      "unevaluatedProperties": false
    },
    "fastener": {
      "type": "object",
      "title": "Fastener",
      "description": "What a bracket is fixed with, into one sort of wall.",
      "required": [
        "id",
        "name",
        "into",
        "as"
      ],
      "properties": {
        "id": {
          "$ref": "#/$defs/id",
          "description": "The short name by which treatments use it."
        },
        "name": {
          "type": "string",
          "minLength": 1,
          "description": "What people call it, as it stands on its box."
        },
        "into": {
          "enum": [
            "wood",
            "metal",
            "hollow",
            "masonry",
            "concrete"
          ],
          "description": "What it holds in: a stud or block of wood, a metal stud, the board itself with nothing behind it, masonry or concrete."
        },
        "as": {
          "enum": [
            "wood screw",
            "lag screw",
            "listed"
          ],
          "description": "A wood screw or lag screw holds in wood by published equations; anything else, and anything in another wall, only by its own listing."
        },
        "number": {
          "type": "integer",
          "minimum": 4,
          "maximum": 24,
          "description": "The number of a wood screw, such as 8."
        },
        "diameter": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/16 in",
            "most": "1 in"
          },
          "description": "Its diameter over the thread, where it has no number."
        },
        "length": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/4 in",
            "most": "12 in"
          },
          "description": "How long it is, without a raised head."
        },
        "thread": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/8 in",
            "most": "12 in"
          },
          "description": "How much of its length is threaded. Left out: two thirds."
        },
        "listing": {
          "type": "object",
          "title": "Listing",
          "description": "What its maker or a test report lists for this wall.",
          "required": [
            "is",
            "from"
          ],
          "properties": {
            "is": {
              "enum": [
                "allowable",
                "ultimate"
              ],
              "description": "Whether the loads may be put on it, or broke it in a test."
            },
            "pull": {
              "type": "string",
              "pattern": "^[0-9]+(\\.[0-9]+)? ?(N|kN|lbf|kgf)$",
              "description": "Straight out of the wall, such as `180 N` or `40 lbf`."
            },
            "shear": {
              "type": "string",
              "pattern": "^[0-9]+(\\.[0-9]+)? ?(N|kN|lbf|kgf)$",
              "description": "Along the wall."
            },
            "margin": {
              "type": "number",
              "minimum": 1,
              "maximum": 20,
              "description": "What an ultimate load is divided by; the listing or the code says it. Without it an ultimate load is not used."
            },
            "board": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1/8 in",
                "most": "4 in"
              },
              "description": "The board that it is listed for, when it holds in a board."
            },
            "from": {
              "type": "string",
              "minLength": 1,
              "description": "Where that stands: the sheet or report and its date."
            }
          },
          "unevaluatedProperties": false
        }
      },
      "unevaluatedProperties": false
    },
    "plateHole": {
      "type": "object",
      "title": "PlateHole",
      "description": "A hole of the plate.",
      "required": [
        "id",
        "down"
      ],
      "properties": {
        "id": {
          "enum": [
            "top",
            "middle",
            "lower"
          ],
          "description": "Which hole it is."
        },
        "down": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "18 in"
          },
          "description": "From the top of the plate down to its middle."
        }
      },
      "unevaluatedProperties": false
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
        "pile": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "4 in"
          },
          "description": "How high the carpet's pile stands when it is brushed up."
        },
        "mayDiffer": {
          "type": "array",
          "description": "What may differ between the windows of this room; everything else is compared.",
          "items": {
            "enum": [
              "rods",
              "hems",
              "patterns"
            ],
            "description": "Something that is meant to differ."
          }
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
          "maxItems": 12,
          "description": "The walls, from left to right. All lengths along the wall run on from the left edge of the first casing, around corners too.",
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
        "floorOn": {
          "enum": [
            "finished floor",
            "carpet brushed flat",
            "subfloor"
          ],
          "description": "What the points of the floor were measured on."
        },
        "ceiling": {
          "type": "array",
          "description": "Points of the ceiling over the window. Without any, the room's ceiling holds.",
          "items": {
            "$ref": "#/$defs/levelPoint"
          }
        },
        "aboveCeiling": {
          "enum": [
            "wood",
            "metal",
            "hollow",
            "concrete",
            "unknown"
          ],
          "description": "What is above the ceiling where brackets go."
        },
        "before": {
          "type": "object",
          "title": "Before",
          "description": "What has to go first.",
          "properties": {
            "remove": {
              "type": "string",
              "minLength": 1,
              "description": "The old treatment that is taken down."
            },
            "patch": {
              "type": "string",
              "minLength": 1,
              "description": "Holes to patch, and who patches them."
            }
          },
          "unevaluatedProperties": false
        },
        "treatments": {
          "type": "array",
          "maxItems": 4,
          "description": "What hangs here, from the glass outward.",
          "items": {
            "$ref": "#/$defs/treatment"
          }
        },
        "found": {
          "type": "object",
          "title": "WindowFound",
          "description": "What was found at this window that the order cannot hold.",
          "properties": {
            "done": {
              "type": "object",
              "description": "Steps that are done, by plugin and step.",
              "additionalProperties": {
                "type": "object",
                "description": "The steps of one plugin, each done or not.",
                "additionalProperties": {
                  "type": "boolean",
                  "description": "Whether this step is done."
                }
              }
            },
            "overrides": {
              "type": "object",
              "description": "Stops that somebody lifted, by the code of the check, each with the reason.",
              "additionalProperties": {
                "type": "string",
                "minLength": 1,
                "description": "Why the work went on."
              }
            },
            "decided": {
              "type": "object",
              "description": "What was decided about a difference of its openings, by what it is about.",
              "additionalProperties": {
                "type": "string",
                "minLength": 1,
                "description": "The decision."
              }
            },
            "notes": {
              "type": "object",
              "description": "Notes, each under a name of its own.",
              "additionalProperties": {
                "type": "string",
                "minLength": 1,
                "description": "The note."
              }
            },
            "photos": {
              "type": "object",
              "description": "Photos, each under the hash of its content, with what it shows.",
              "additionalProperties": {
                "type": "string",
                "minLength": 1,
                "description": "What the photo shows."
              }
            },
            "photoOf": {
              "type": "object",
              "description": "When a photo was taken, under its hash.",
              "additionalProperties": {
                "enum": [
                  "before",
                  "closed",
                  "open",
                  "detail",
                  "after"
                ],
                "description": "Before the work, the drapery closed or open, a detail, or after something was mended."
              }
            },
            "photoMarks": {
              "type": "object",
              "description": "What was marked on a photo, under its hash: drawn over it, the photo stays as it is.",
              "additionalProperties": {
                "type": "object",
                "description": "Marks, each under a name of its own.",
                "additionalProperties": {
                  "$ref": "#/$defs/photoMark"
                }
              }
            }
          },
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
        "width": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1 in",
            "most": "200 ft"
          },
          "description": "From its left end to its right end."
        },
        "left": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "-100 ft",
            "most": "100 ft"
          },
          "description": "Where the wall begins, along the wall from the left edge of the casing: in a corner or at an edge."
        },
        "corner": {
          "type": "number",
          "minimum": 20,
          "maximum": 340,
          "description": "The angle to the next wall, in degrees, seen from the room: 90 in an inside corner, 270 around an outside one. Left out: not measured."
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
            },
            "wood": {
              "enum": [
                "Douglas Fir-Larch",
                "Southern Pine",
                "Spruce-Pine-Fir",
                "Spruce-Pine-Fir (South)",
                "Hem-Fir",
                "Western Cedars",
                "Red Oak",
                "White Oak",
                "Eastern White Pine",
                "Yellow Poplar",
                "Ponderosa Pine",
                "Redwood"
              ],
              "description": "The species group of studs and blocks, as it is stamped on them. Left out: one of the lightest is reckoned."
            },
            "finish": {
              "enum": [
                "paint",
                "paper",
                "tile",
                "panelling",
                "bare"
              ],
              "description": "What is on the surface."
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
        "crown": {
          "type": "object",
          "title": "Crown",
          "description": "The moulding where wall and ceiling meet.",
          "properties": {
            "bottom": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "-2 ft",
                "most": "60 ft"
              },
              "description": "From the level line up to its lowest edge."
            },
            "projection": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1/4 in",
                "most": "2 ft"
              },
              "description": "How far it stands out from the wall at its top."
            }
          },
          "unevaluatedProperties": false
        },
        "studs": {
          "type": "array",
          "description": "Studs or blocking that are known.",
          "items": {
            "type": "object",
            "title": "Stud",
            "description": "A stud or a piece of blocking.",
            "required": [
              "id",
              "x"
            ],
            "properties": {
              "id": {
                "$ref": "#/$defs/id",
                "description": "A short name, unique on the wall."
              },
              "x": {
                "$ref": "length.schema.json",
                "x-evenhem-plausible": {
                  "least": "-100 ft",
                  "most": "100 ft"
                },
                "description": "Its middle, along the wall from the left edge of the casing."
              }
            },
            "unevaluatedProperties": false
          }
        },
        "obstacles": {
          "type": "array",
          "description": "What is in the way or must stay clear.",
          "items": {
            "$ref": "#/$defs/obstacle"
          }
        },
        "openings": {
          "type": "array",
          "minItems": 0,
          "maxItems": 40,
          "description": "The openings, from left to right. A wall of a bay may have none.",
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
        "x": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "-100 ft",
            "most": "100 ft"
          },
          "description": "Where its casing begins, from the left edge of the first casing. The first one's is 0 and is left out."
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
        "head": {
          "type": "array",
          "description": "Points of the top edge of the casing, where it was read at more places than one. Without any, the casing's top holds all along.",
          "items": {
            "$ref": "#/$defs/levelPoint"
          }
        },
        "inside": {
          "type": "object",
          "title": "Inside",
          "description": "The opening between its jambs.",
          "properties": {
            "fromLeft": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "0 in",
                "most": "4 ft"
              },
              "description": "From the left edge of the casing to the left jamb."
            },
            "width": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1 in",
                "most": "40 ft"
              },
              "description": "From jamb to jamb."
            },
            "top": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "-2 ft",
                "most": "60 ft"
              },
              "description": "From the level line up to the head."
            },
            "bottom": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "-2 ft",
                "most": "60 ft"
              },
              "description": "From the level line up to the stool or the threshold."
            }
          },
          "unevaluatedProperties": false
        },
        "glass": {
          "type": "object",
          "title": "Glass",
          "description": "The glass that is seen.",
          "properties": {
            "fromLeft": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "0 in",
                "most": "6 ft"
              },
              "description": "From the left edge of the casing to the visible glass."
            },
            "width": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1 in",
                "most": "40 ft"
              },
              "description": "Between its visible edges."
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
        },
        "apron": {
          "type": "object",
          "title": "Apron",
          "description": "The board below the stool.",
          "properties": {
            "bottom": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "-2 ft",
                "most": "60 ft"
              },
              "description": "From the level line up to its lowest edge."
            }
          },
          "unevaluatedProperties": false
        },
        "opens": {
          "enum": [
            "not",
            "in",
            "out",
            "up",
            "sideways"
          ],
          "description": "How the sash or the door opens."
        },
        "swing": {
          "type": "object",
          "title": "Swing",
          "description": "What of the opening comes into the room when it is open.",
          "properties": {
            "top": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "-2 ft",
                "most": "60 ft"
              },
              "description": "From the level line up to the top of what swings in."
            },
            "bottom": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "-2 ft",
                "most": "60 ft"
              },
              "description": "From the level line up to the bottom of what swings in."
            }
          },
          "unevaluatedProperties": false
        },
        "handle": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "18 in"
          },
          "description": "How far its handle stands out from the wall."
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
        "lining": {
          "$ref": "#/$defs/id",
          "x-evenhem-names": "fabrics",
          "description": "The entry under `fabrics` that it is lined with, for counting the cloth. Left out: none is counted."
        },
        "interlining": {
          "$ref": "#/$defs/id",
          "x-evenhem-names": "fabrics",
          "description": "The entry under `fabrics` that lies between fabric and lining, for counting the cloth. Left out: none is counted."
        },
        "fullness": {
          "type": "number",
          "minimum": 1,
          "maximum": 6,
          "description": "How many times its width the cloth of a panel is wide: 2.5 is two and a half times."
        },
        "fullnessPercent": {
          "type": "number",
          "minimum": 0,
          "maximum": 600,
          "description": "The same in per cent, where the order says it so; the workroom's rule `percentMeans` says what it means. `fullness` goes before it."
        },
        "cutting": {
          "type": "object",
          "title": "Cutting",
          "description": "What is cut beyond the finished sizes, where it does not follow from the hems and headings of the panels.",
          "properties": {
            "hem": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "0 in",
                "most": "6 ft"
              },
              "description": "For the bottom hem, all its layers together. Left out: the panel's hem times the workroom's `hemTurns`."
            },
            "heading": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "0 in",
                "most": "4 ft"
              },
              "description": "For the heading, all its layers together. Left out: the height of the heading times the workroom's `headingTurns`."
            },
            "length": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "0 in",
                "most": "10 ft"
              },
              "description": "All that a cut is longer than the finished length, in place of hem, heading and the workroom's `cutExtra`."
            },
            "sideHems": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "0 in",
                "most": "4 ft"
              },
              "description": "For both side hems of a panel together. Left out: twice the panel's side hem times the workroom's `sideHemTurns`."
            }
          },
          "unevaluatedProperties": false
        },
        "draw": {
          "enum": [
            "pair",
            "one-way left",
            "one-way right",
            "stationary"
          ],
          "description": "How it opens. A pair opens to both sides; one-way left gathers at the left end; stationary panels stay where they hang."
        },
        "leadingEnd": {
          "enum": [
            "symmetric",
            "reach"
          ],
          "description": "Where the bracket at the leading end of a one-way draw stands: like the other one, so that the ends look alike, or further out, so that the cloth reaches the end of what it covers. Default symmetric."
        },
        "mount": {
          "enum": [
            "wall",
            "casing",
            "crown",
            "ceiling",
            "inside",
            "side walls"
          ],
          "description": "What the brackets are fixed to. Default wall."
        },
        "hemAt": {
          "enum": [
            "floor",
            "sill",
            "apron"
          ],
          "description": "What the hem is measured from: the floor; the top of the stool, above which it ends; the bottom of the apron, below which it ends. Default floor."
        },
        "breakAgreed": {
          "type": "boolean",
          "description": "The customer wants cloth that lies on the floor also where it is drawn."
        },
        "openings": {
          "type": "array",
          "description": "The ids of the openings that it covers. Left out: all of them.",
          "items": {
            "$ref": "#/$defs/id",
            "description": "An opening."
          }
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
              "description": "What the closed drapery covers, from its left end to its right end. It may be left out where it is said how far the rod passes the casing on both sides."
            },
            "pastLeft": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "-3 ft",
                "most": "20 ft"
              },
              "description": "How far it reaches past the casing on the left. Left out: as far as on the right."
            },
            "pastRight": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "-3 ft",
                "most": "20 ft"
              },
              "description": "How far it reaches past the casing on the right."
            },
            "middle": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "-100 ft",
                "most": "100 ft"
              },
              "description": "Where a pair meets, from the left edge of the casing. Left out: in the middle of what is covered."
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
            },
            "belowCeiling": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "0 in",
                "most": "20 ft"
              },
              "description": "The intended distance from the ceiling down to the top of the rod."
            },
            "headingAbove": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "-12 in",
                "most": "12 in"
              },
              "description": "How far the top of the drapery is meant to stand above the top of the rod; below it is negative."
            },
            "cut": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "6 in",
                "most": "60 ft"
              },
              "description": "How long the rod was cut, without finials."
            },
            "thin": {
              "type": "object",
              "title": "ThinPart",
              "description": "Of a rod that is pushed together: where its thinner tube is alone.",
              "required": [
                "from",
                "to"
              ],
              "properties": {
                "from": {
                  "$ref": "length.schema.json",
                  "x-evenhem-plausible": {
                    "least": "0 in",
                    "most": "60 ft"
                  },
                  "description": "From the left end of the rod to where the thicker tube ends."
                },
                "to": {
                  "$ref": "length.schema.json",
                  "x-evenhem-plausible": {
                    "least": "1 in",
                    "most": "60 ft"
                  },
                  "description": "From the left end of the rod to where a thicker tube begins again; the whole length where none does."
                }
              },
              "unevaluatedProperties": false
            },
            "splices": {
              "type": "array",
              "description": "Where the pieces of the rod meet.",
              "items": {
                "type": "object",
                "title": "Splice",
                "description": "A place where two pieces of the rod meet.",
                "required": [
                  "id",
                  "fromLeft"
                ],
                "properties": {
                  "id": {
                    "$ref": "#/$defs/id",
                    "description": "A short name, unique on this rod."
                  },
                  "fromLeft": {
                    "$ref": "length.schema.json",
                    "x-evenhem-plausible": {
                      "least": "1 in",
                      "most": "60 ft"
                    },
                    "description": "From the left end of the rod to the splice."
                  }
                },
                "unevaluatedProperties": false
              }
            },
            "supports": {
              "type": "array",
              "description": "The supports between the end brackets. Left out: none.",
              "items": {
                "type": "object",
                "title": "Support",
                "description": "A support between the end brackets.",
                "required": [
                  "id",
                  "x"
                ],
                "properties": {
                  "id": {
                    "$ref": "#/$defs/id",
                    "description": "A short name, unique on this rod."
                  },
                  "x": {
                    "$ref": "length.schema.json",
                    "x-evenhem-plausible": {
                      "least": "-100 ft",
                      "most": "100 ft"
                    },
                    "description": "Its middle, along the wall from the left edge of the casing."
                  }
                },
                "unevaluatedProperties": false
              }
            }
          },
          "unevaluatedProperties": false
        },
        "projection": {
          "type": "object",
          "title": "Projections",
          "description": "From the wall to where the hooks bear, where the brackets of this treatment are set otherwise than the hardware says.",
          "properties": {
            "left": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1/2 in",
                "most": "24 in"
              },
              "description": "At the left end."
            },
            "right": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1/2 in",
                "most": "24 in"
              },
              "description": "At the right end."
            }
          },
          "unevaluatedProperties": false
        },
        "overlap": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "24 in"
          },
          "description": "How far the leading edges of a pair lie over one another when it is drawn. Left out: they meet edge to edge."
        },
        "clearance": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "-4 ft",
            "most": "3 ft"
          },
          "description": "From the floor up to the hem; negative when the cloth breaks on it. At a sill: from the stool up to the hem. At an apron: from its bottom down to the hem."
        },
        "panels": {
          "type": "array",
          "minItems": 1,
          "maxItems": 40,
          "description": "The panels, from left to right. A pair has two, a one-way draw one.",
          "items": {
            "$ref": "#/$defs/panel"
          }
        },
        "bracketsOf": {
          "$ref": "#/$defs/id",
          "description": "The treatment whose double brackets carry this rod too. Left out: it has brackets of its own."
        },
        "fasteners": {
          "type": "array",
          "minItems": 1,
          "uniqueItems": true,
          "description": "The entries under `fasteners` that its brackets are fixed with. Left out: all of them.",
          "items": {
            "$ref": "#/$defs/id",
            "x-evenhem-names": "fasteners"
          }
        },
        "clearGlass": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "60 ft"
          },
          "description": "How much of the glass is meant to be clear when the drapery is open."
        },
        "operation": {
          "type": "object",
          "title": "Operation",
          "description": "How it is drawn.",
          "required": [
            "by"
          ],
          "properties": {
            "by": {
              "enum": [
                "hand",
                "wand",
                "cord",
                "continuous loop",
                "motor"
              ],
              "description": "What moves it."
            },
            "side": {
              "enum": [
                "left",
                "right"
              ],
              "description": "On which side that is. Default left."
            },
            "handle": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "0 in",
                "most": "12 ft"
              },
              "description": "From the floor up to what people hold or press."
            },
            "freeCord": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "0 in",
                "most": "20 ft"
              },
              "description": "How long a cord with a free end hangs within reach."
            },
            "lowest": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "0 in",
                "most": "20 ft"
              },
              "description": "From the floor up to the lowest point of the cord or the loop."
            },
            "motor": {
              "type": "object",
              "title": "Motor",
              "description": "The motor.",
              "properties": {
                "power": {
                  "enum": [
                    "outlet",
                    "hard-wired",
                    "battery",
                    "none"
                  ],
                  "description": "Where its power comes from."
                },
                "lead": {
                  "$ref": "length.schema.json",
                  "x-evenhem-plausible": {
                    "least": "0 in",
                    "most": "30 ft"
                  },
                  "description": "How long its cable is."
                }
              },
              "unevaluatedProperties": false
            }
          },
          "unevaluatedProperties": false
        },
        "hooks": {
          "type": "object",
          "title": "Hooks",
          "description": "The hooks of the panels.",
          "properties": {
            "kind": {
              "enum": [
                "pin-on",
                "slip-in",
                "sew-on",
                "clip"
              ],
              "description": "What sort."
            },
            "wire": {
              "$ref": "length.schema.json",
              "x-evenhem-plausible": {
                "least": "1/64 in",
                "most": "1/2 in"
              },
              "description": "How thick their wire is."
            },
            "spares": {
              "type": "integer",
              "minimum": 0,
              "maximum": 2000,
              "description": "How many more were packed than are needed."
            }
          },
          "unevaluatedProperties": false
        },
        "found": {
          "type": "object",
          "title": "TreatmentFound",
          "description": "What was found at this treatment that the order cannot hold.",
          "properties": {
            "brackets": {
              "type": "object",
              "description": "Brackets, by the name of the bracket.",
              "additionalProperties": {
                "type": "object",
                "title": "FoundBracket",
                "description": "A bracket as it was found.",
                "properties": {
                  "hole": {
                    "$ref": "length.schema.json",
                    "x-evenhem-plausible": {
                      "least": "-2 ft",
                      "most": "60 ft"
                    },
                    "description": "The height of its top hole above the level line."
                  },
                  "fixed": {
                    "type": "boolean",
                    "description": "Whether it is fixed for good. From then on no reading moves its mark."
                  },
                  "behind": {
                    "enum": [
                      "wood",
                      "metal",
                      "hollow",
                      "masonry",
                      "concrete"
                    ],
                    "description": "What the drill met behind the surface."
                  },
                  "screw": {
                    "type": "string",
                    "minLength": 1,
                    "description": "The screws that were driven there, as their box has it: `No. 10 × 3`, or in millimetres `5 × 70`."
                  },
                  "floorToHole": {
                    "$ref": "length.schema.json",
                    "x-evenhem-plausible": {
                      "least": "1 in",
                      "most": "60 ft"
                    },
                    "description": "From the floor right below up to its top hole, as the tape says."
                  },
                  "floorToHead": {
                    "$ref": "length.schema.json",
                    "x-evenhem-plausible": {
                      "least": "1 in",
                      "most": "60 ft"
                    },
                    "description": "From the floor right below up to the top of the frame, read at this bracket."
                  },
                  "floorToCeiling": {
                    "$ref": "length.schema.json",
                    "x-evenhem-plausible": {
                      "least": "1 ft",
                      "most": "60 ft"
                    },
                    "description": "From the floor right below up to the ceiling, read at this bracket."
                  },
                  "floorToLevel": {
                    "$ref": "length.schema.json",
                    "x-evenhem-plausible": {
                      "least": "1 in",
                      "most": "60 ft"
                    },
                    "description": "From the floor right below up to a level line that was carried over from the top hole of the first bracket."
                  },
                  "follows": {
                    "enum": [
                      "level",
                      "head",
                      "ceiling",
                      "floor",
                      "between"
                    ],
                    "description": "What the rod follows on its way from the first bracket to this one, as somebody chose it."
                  }
                },
                "unevaluatedProperties": false
              }
            },
            "supports": {
              "type": "object",
              "description": "Supports that were added on site, by a name.",
              "additionalProperties": {
                "type": "object",
                "title": "AddedSupport",
                "description": "A support that was added.",
                "properties": {
                  "x": {
                    "$ref": "length.schema.json",
                    "x-evenhem-plausible": {
                      "least": "-20 ft",
                      "most": "60 ft"
                    },
                    "description": "Its middle, along the wall from the left edge of the casing."
                  }
                },
                "unevaluatedProperties": false
              }
            },
            "done": {
              "type": "object",
              "description": "Steps of this treatment that are done, by plugin and step.",
              "additionalProperties": {
                "type": "object",
                "description": "The steps of one plugin, each done or not.",
                "additionalProperties": {
                  "type": "boolean",
                  "description": "Whether this step is done."
                }
              }
            },
            "first": {
              "$ref": "#/$defs/id",
              "description": "The bracket that is marked first and that the others are taken from: `left`, `right` or a support. Left out: the end bracket where the floor is higher, the left one where it is level."
            },
            "overrides": {
              "type": "object",
              "description": "Stops of this treatment that somebody lifted, each with the reason: by the code of the check, or by the code and what exactly it was about. Those of its window hold for all that hangs there.",
              "additionalProperties": {
                "type": "string",
                "minLength": 1,
                "description": "Why the work went on."
              }
            },
            "came": {
              "type": "object",
              "description": "How many came, by the code of the part.",
              "additionalProperties": {
                "type": "integer",
                "minimum": 0,
                "maximum": 100000,
                "description": "How many were counted."
              }
            },
            "decided": {
              "type": "object",
              "description": "What was decided about a difference, by what it is about.",
              "additionalProperties": {
                "type": "string",
                "minLength": 1,
                "description": "The decision."
              }
            },
            "hemsRead": {
              "type": "object",
              "description": "How far the drawn hem clears the floor, by panel; of a hem that ends above a stool or below an apron, how far it ends from that.",
              "additionalProperties": {
                "type": "object",
                "description": "Readings of one panel, by the number of the hook that they are below, counted from the leading edge.",
                "additionalProperties": {
                  "$ref": "length.schema.json",
                  "x-evenhem-plausible": {
                    "least": "-4 ft",
                    "most": "10 ft"
                  },
                  "description": "From what the hem is measured from to the hem; lying on the floor negative."
                }
              }
            },
            "pins": {
              "type": "object",
              "description": "Pins as they were set again, by panel.",
              "additionalProperties": {
                "type": "object",
                "description": "Pins of one panel, by the number of the hook, counted from the leading edge.",
                "additionalProperties": {
                  "$ref": "length.schema.json",
                  "x-evenhem-plausible": {
                    "least": "0 in",
                    "most": "12 in"
                  },
                  "description": "From the top of the pin up to the top of the drapery."
                }
              }
            },
            "shown": {
              "type": "object",
              "title": "Shown",
              "description": "What was proven and shown at the hand-over.",
              "properties": {
                "drawnFiveTimes": {
                  "type": "boolean",
                  "description": "It was drawn and opened five times and ran freely."
                },
                "overlapCloses": {
                  "type": "boolean",
                  "description": "The leading edges pass one another when it is drawn."
                },
                "hemsEven": {
                  "type": "boolean",
                  "description": "The hems are even."
                },
                "finialsTight": {
                  "type": "boolean",
                  "description": "The finials are tight."
                },
                "wandShown": {
                  "type": "boolean",
                  "description": "The customer was shown the wand."
                },
                "motorShown": {
                  "type": "boolean",
                  "description": "The customer was shown the motor and its remote control."
                },
                "sparesLeft": {
                  "type": "boolean",
                  "description": "Spares and remote controls were left with the customer."
                },
                "rubbishGone": {
                  "type": "boolean",
                  "description": "Nothing of the work was left lying about."
                }
              },
              "unevaluatedProperties": false
            },
            "hungOn": {
              "type": "string",
              "format": "date",
              "description": "The day on which it was hung."
            },
            "lookAgain": {
              "type": "string",
              "format": "date",
              "description": "The day on which somebody comes back to read the hem again."
            },
            "hems": {
              "type": "object",
              "description": "How far the hem of a panel clears the floor, by panel.",
              "additionalProperties": {
                "$ref": "length.schema.json",
                "x-evenhem-plausible": {
                  "least": "-4 ft",
                  "most": "10 ft"
                },
                "description": "From the floor up to the hem."
              }
            },
            "stacks": {
              "type": "object",
              "description": "How wide a panel stacks when it is drawn aside, by panel.",
              "additionalProperties": {
                "$ref": "length.schema.json",
                "x-evenhem-plausible": {
                  "least": "0 in",
                  "most": "30 ft"
                },
                "description": "From the outer edge to the leading edge when it is open."
              }
            },
            "cord": {
              "type": "object",
              "title": "FoundCord",
              "description": "What was recorded of cords when the draperies hung.",
              "properties": {
                "device": {
                  "enum": [
                    "fixed and proven",
                    "not proven",
                    "missing"
                  ],
                  "description": "How the tension device of a loop was left."
                },
                "deviceHeight": {
                  "$ref": "length.schema.json",
                  "x-evenhem-plausible": {
                    "least": "0 in",
                    "most": "20 ft"
                  },
                  "description": "From the floor up to the tension device."
                },
                "looseLoop": {
                  "$ref": "length.schema.json",
                  "x-evenhem-plausible": {
                    "least": "0 in",
                    "most": "20 ft"
                  },
                  "description": "The way around the largest loop that can be pulled loose within reach."
                },
                "freeCord": {
                  "$ref": "length.schema.json",
                  "x-evenhem-plausible": {
                    "least": "0 in",
                    "most": "20 ft"
                  },
                  "description": "The longest free cord within reach."
                }
              },
              "unevaluatedProperties": false
            }
          },
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
    "photoMark": {
      "title": "Mark on a photo",
      "type": "object",
      "description": "A mark on a photo. Places on it are shares of its width and height, from the left and from the top, the photo upright.",
      "required": [
        "kind",
        "x",
        "y"
      ],
      "properties": {
        "kind": {
          "enum": [
            "point",
            "arrow",
            "area",
            "words"
          ],
          "description": "A ring around a point, an arrow that ends there, an area from one corner to the other, or words."
        },
        "x": {
          "type": "number",
          "minimum": 0,
          "maximum": 1,
          "description": "From the left: the point, where an arrow ends, a corner, or where words begin."
        },
        "y": {
          "type": "number",
          "minimum": 0,
          "maximum": 1,
          "description": "From the top."
        },
        "toX": {
          "type": "number",
          "minimum": 0,
          "maximum": 1,
          "description": "Where an arrow begins, or the other corner of an area, from the left."
        },
        "toY": {
          "type": "number",
          "minimum": 0,
          "maximum": 1,
          "description": "The same from the top."
        },
        "says": {
          "type": "string",
          "minLength": 1,
          "maxLength": 200,
          "description": "What it says."
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
        "outer": {
          "enum": [
            "left",
            "right"
          ],
          "description": "On which side its outer edge is. Left out: the first of a pair on the left, the second on the right; of stationary panels those in the left half on the left."
        },
        "bag": {
          "type": "string",
          "minLength": 1,
          "description": "What its bag is labelled."
        },
        "share": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1 in",
            "most": "60 ft"
          },
          "description": "How much of the rod it is meant to cover. Left out: what follows from the draw."
        },
        "at": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "-100 ft",
            "most": "100 ft"
          },
          "description": "Where its outer edge hangs, for a stationary panel. Left out: at the end of the rod on its side."
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
        "outerFlat": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "2 ft"
          },
          "description": "From the last pleat to the outer edge of a panel without a return."
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
        "buckram": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/4 in",
            "most": "2 ft"
          },
          "description": "How high the stiffening of its heading is."
        },
        "hem": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "3 ft"
          },
          "description": "How high the bottom hem is."
        },
        "sideHem": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "1 ft"
          },
          "description": "How wide the side hems are."
        },
        "rightSide": {
          "type": "string",
          "minLength": 1,
          "description": "Which side of the cloth faces the room, and how one tells."
        },
        "patternStart": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "12 ft"
          },
          "description": "From the top of the drapery down to where the pattern's repeat begins."
        },
        "nap": {
          "enum": [
            "up",
            "down",
            "none"
          ],
          "description": "Which way its pile lies on the panels."
        },
        "seams": {
          "type": "array",
          "description": "Where widths are sewn together, from the leading edge of the flat panel.",
          "items": {
            "$ref": "length.schema.json",
            "x-evenhem-plausible": {
              "least": "1/4 in",
              "most": "120 ft"
            },
            "description": "From the leading edge to the seam."
          }
        },
        "weights": {
          "enum": [
            "none",
            "corners",
            "corners and seams",
            "chain"
          ],
          "description": "What keeps the hem down."
        },
        "hemWeight": {
          "type": "string",
          "pattern": "^[0-9]+(\\.[0-9]+)? ?(kg|g|lb|oz)$",
          "description": "What all weights in its hem weigh together, such as `120 g`."
        },
        "weight": {
          "type": "string",
          "pattern": "^[0-9]+(\\.[0-9]+)? ?(kg|g|lb|oz)$",
          "description": "What the panel weighs with all that is sewn into it, such as `4.2 kg` or `9 lb`."
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
                "cartridge pleat",
                "inverted pleat",
                "pencil pleat"
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
    },
    "levelPoint": {
      "type": "object",
      "title": "LevelPoint",
      "description": "A height at a place along the wall.",
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
            "most": "60 ft"
          },
          "description": "Above the level line."
        }
      },
      "unevaluatedProperties": false
    },
    "obstacle": {
      "type": "object",
      "title": "Obstacle",
      "description": "Something on the wall, on the ceiling or in front of it that hardware and cloth must keep from.",
      "required": [
        "id",
        "kind"
      ],
      "properties": {
        "id": {
          "$ref": "#/$defs/id",
          "description": "A short name, unique on the wall."
        },
        "kind": {
          "enum": [
            "switch",
            "thermostat",
            "outlet",
            "detector",
            "sprinkler head",
            "diffuser",
            "grille",
            "register",
            "electric heater",
            "hydronic heater",
            "old hardware",
            "door swing",
            "pipe",
            "other"
          ],
          "description": "What it is."
        },
        "name": {
          "type": "string",
          "minLength": 1,
          "description": "What people call it, where its kind does not say enough."
        },
        "left": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "-100 ft",
            "most": "100 ft"
          },
          "description": "Its left edge, along the wall from the left edge of the casing."
        },
        "bottom": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "-2 ft",
            "most": "60 ft"
          },
          "description": "From the level line up to its lowest edge."
        },
        "width": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/16 in",
            "most": "40 ft"
          },
          "description": "How wide it is."
        },
        "height": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/16 in",
            "most": "40 ft"
          },
          "description": "How high it is."
        },
        "depth": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "6 ft"
          },
          "description": "How far it stands out from the wall."
        },
        "keepOff": {
          "$ref": "length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "10 ft"
          },
          "description": "How far hardware and cloth must keep from it."
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
export const catalogueSchema: Readonly<Record<string, unknown>> = {
  "$schema": "https://json-schema.org/draft/2020-12/schema",
  "$id": "https://evenhem.example/catalogue/1/catalogue.schema.json",
  "title": "SharedCatalogue",
  "description": "Hardware and fabrics that several jobs share. It has a file of its own.",
  "type": "object",
  "required": [
    "format",
    "units",
    "name"
  ],
  "properties": {
    "$schema": {
      "$ref": "https://evenhem.example/job/1/job.schema.json#/properties/$schema",
      "description": "Where an editor finds this schema."
    },
    "format": {
      "const": "evenhem-catalogue/1",
      "description": "The name and the version of this format."
    },
    "units": {
      "$ref": "https://evenhem.example/job/1/job.schema.json#/properties/units",
      "description": "What a length without a unit is in, whatever the units of the job that takes it."
    },
    "name": {
      "type": "string",
      "minLength": 1,
      "description": "What people call this catalogue."
    },
    "fabrics": {
      "$ref": "https://evenhem.example/job/1/job.schema.json#/properties/fabrics",
      "description": "Fabrics, as in a job."
    },
    "hardware": {
      "$ref": "https://evenhem.example/job/1/job.schema.json#/properties/hardware",
      "description": "Rods, tracks and what belongs to them, as in a job."
    }
  },
  "unevaluatedProperties": false
}
