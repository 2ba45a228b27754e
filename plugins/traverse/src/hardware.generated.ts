// Generated from plugins/traverse/src/hardware.schema.json by `npm run generate`.
import type { Length } from '@evenhem/length'

/** A short name, unique in its list: small letters, digits and hyphens. */
export type Id = string

/** A traverse rod: carriers run in it, and the panels hang from these. */
export interface TraverseRod {
  /** The short name by which treatments use this hardware. */
  readonly id: Id
  /** A traverse rod, decorative or plain, or a track. */
  readonly kind: 'traverse'
  /** What people call it. */
  readonly name: string
  /** Where this entry was taken from. */
  readonly catalogue?: Catalogue
  /** The draws that it is made for. Left out: any. */
  readonly draws?: readonly ('pair' | 'one-way left' | 'one-way right' | 'stationary')[]
  /** The rod. */
  readonly rod: TraverseSection
  /** The carriers. */
  readonly carrier: Carrier
  /** The carriers at the leading edges, which the draw moves. */
  readonly master?: MasterCarrier
  /** The end brackets. */
  readonly bracket: EndBracket
  /** The supports between the end brackets. */
  readonly support?: TraverseSupport
  /** How it is fixed to a ceiling. */
  readonly ceiling?: CeilingBracket
  /** What closes each end. */
  readonly finial?: TraverseFinial
}

/** Where this entry was taken from. With a catalogue of this job and without members of its own the entry is what the catalogue says; with members of its own it is a frozen copy, which wins. */
export interface Catalogue {
  /** The name of the catalogue. */
  readonly name?: string
  /** The catalogue of this job that holds it, by its short name under `catalogues`. */
  readonly from?: Id
  /** The number or name of the item in it; of a catalogue of this job its id there. Left out: the id is the same. */
  readonly item?: string
  /** The day of the catalogue. */
  readonly date?: string
}

/** The rod. */
export interface TraverseSection {
  /** How high it is, seen from the room. */
  readonly height: Length
  /** What it is made of. */
  readonly material?: 'wood' | 'steel' | 'aluminium' | 'brass' | 'iron' | 'plastic'
  /** The largest distance between two brackets that its maker allows. */
  readonly span?: Length
  /** How short it can be set, when its length can be set. */
  readonly least?: Length
  /** How long it can be set, when its length can be set. */
  readonly most?: Length
  /** Its section, where it is solid or a closed tube. Left out: how far it sags is not reckoned. */
  readonly section?: Section
  /** Whether a splice can turn or is as stiff as the rod. Default turns. */
  readonly splice?: 'turns' | 'stiff'
  /** What it weighs by its length, such as `450 g/m`. Left out: what its section and material come to. */
  readonly weight?: string
}

/** The section of a rod that is the same all around its length: solid or a tube. A rod with a slot is none of these. */
export interface Section {
  /** Its outline. */
  readonly shape: 'round' | 'square' | 'rectangle'
  /** How high it is, seen from the room; of a round one its diameter. */
  readonly height: Length
  /** How deep a rectangle is, from the wall outward. */
  readonly width?: Length
  /** How thick its wall is, when it is a tube. Left out: it is solid. */
  readonly wall?: Length
}

/** The carriers. */
export interface Carrier {
  /** Whether the hooks hang in front of the rod or under it. */
  readonly at: 'front' | 'under'
  /** From the top of the rod down to where a hook bears in a carrier. */
  readonly drop?: Length
  /** How wide a carrier is along the rod. */
  readonly width?: Length
  /** How wide its opening for a hook is. */
  readonly opening?: Length
  /** Whether carriers that are not needed can be taken out at the end of the rod. */
  readonly comesOut?: boolean
  /** What one carrier weighs, such as `5 g`. */
  readonly weight?: string
}

/** The carriers at the leading edges, which the draw moves. */
export interface MasterCarrier {
  /** How many holes for hooks each has. */
  readonly holes?: number
  /** How much of the rod each takes. */
  readonly length?: Length
  /** How far the arms carry the leading edges of a pair past one another; 0 without arms. */
  readonly overlap?: Length
  /** Which leading edge lies in front when a pair is drawn. */
  readonly over?: 'left' | 'right'
}

/** The end brackets. */
export interface EndBracket {
  /** The top of the plate against the top of the rod: below it is negative. */
  readonly top?: Length
  /** How wide the plate is. */
  readonly width?: Length
  /** How high the plate is. */
  readonly height?: Length
  /** The holes of the plate, from the top down, all on its middle line. */
  readonly holes?: readonly PlateHole[]
  /** The screw that its maker asks for. */
  readonly screw?: string
  /** How thick the plate is, through which the screw goes before it reaches the wall. Left out: 1/8 in is reckoned. */
  readonly thickness?: Length
  /** What its maker lets one of them carry, such as `9 kg` or `20 lb`. */
  readonly rated?: string
  /** Whether it holds the rod down too, by a screw or a clip. Left out: an open saddle, out of which the rod can lift. */
  readonly holdsDown?: boolean
  /** From the wall to where the hooks bear in the carriers. */
  readonly projection?: Length
  /** From the end of the rod inward to the middle of the bracket; outward is negative. */
  readonly inset?: Length
  /** How many hooks each end bracket takes: at the end of the rod, and behind it at the back. */
  readonly hookHoles?: 0 | 1 | 2
  /** Of a double bracket: where it carries a second rod, behind its own. */
  readonly inner?: SecondRod
}

/** A hole of the plate. */
export interface PlateHole {
  /** Which hole it is. */
  readonly id: 'top' | 'middle' | 'lower'
  /** From the top of the plate down to its middle. */
  readonly down: Length
}

/** Where a double bracket carries a second rod, behind its own. */
export interface SecondRod {
  /** The top of the second rod against the top of the first: below it is negative. */
  readonly top: Length
  /** From the wall to where the hooks on the second rod bear. */
  readonly projection: Length
}

/** The supports between the end brackets. */
export interface TraverseSupport {
  /** The top of the plate against the top of the rod: below it is negative. */
  readonly top?: Length
  /** How wide the plate is. */
  readonly width?: Length
  /** How high the plate is. */
  readonly height?: Length
  /** The holes of the plate, from the top down, all on its middle line. */
  readonly holes?: readonly PlateHole[]
  /** The screw that its maker asks for. */
  readonly screw?: string
  /** How thick the plate is, through which the screw goes before it reaches the wall. Left out: 1/8 in is reckoned. */
  readonly thickness?: Length
  /** What its maker lets one of them carry, such as `9 kg` or `20 lb`. */
  readonly rated?: string
  /** Whether it holds the rod down too, by a screw or a clip. Left out: an open saddle, out of which the rod can lift. */
  readonly holdsDown?: boolean
  /** What cannot pass it. What stops carriers stops master carriers too. Default nothing. */
  readonly blocks?: 'nothing' | 'carriers' | 'masters'
}

/** How it is fixed to a ceiling. */
export interface CeilingBracket {
  /** From the ceiling down to the top of the rod. */
  readonly drop?: Length
  /** The holes of each ceiling bracket. */
  readonly holes?: readonly CeilingHole[]
  /** The screw that its maker asks for. */
  readonly screw?: string
  /** What its maker lets one ceiling bracket carry, such as `9 kg` or `20 lb`. */
  readonly rated?: string
}

/** A hole of a ceiling bracket. */
export interface CeilingHole {
  /** Which hole it is. */
  readonly id: 'front' | 'middle' | 'back'
  /** From the line of the hooks toward the room; toward the wall is negative. */
  readonly out: Length
}

/** What closes each end. */
export interface TraverseFinial {
  /** How far it reaches beyond the end of the rod. */
  readonly length?: Length
  /** Half of its greatest thickness. */
  readonly radius?: Length
  /** What one finial weighs, such as `300 g`. */
  readonly weight?: string
}

export const hardwareSchema = {
  "$schema": "https://json-schema.org/draft/2020-12/schema",
  "$id": "https://evenhem.example/traverse/1/hardware.schema.json",
  "title": "TraverseRod",
  "description": "A traverse rod: carriers run in it, and the panels hang from these.",
  "$ref": "https://evenhem.example/job/1/job.schema.json#/$defs/hardware",
  "type": "object",
  "required": [
    "rod",
    "carrier",
    "bracket"
  ],
  "properties": {
    "kind": {
      "const": "traverse",
      "description": "A traverse rod, decorative or plain, or a track."
    },
    "draws": {
      "type": "array",
      "minItems": 1,
      "description": "The draws that it is made for. Left out: any.",
      "items": {
        "enum": [
          "pair",
          "one-way left",
          "one-way right",
          "stationary"
        ]
      }
    },
    "rod": {
      "type": "object",
      "title": "TraverseSection",
      "description": "The rod.",
      "required": [
        "height"
      ],
      "properties": {
        "height": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/4 in",
            "most": "6 in"
          },
          "description": "How high it is, seen from the room."
        },
        "material": {
          "enum": [
            "wood",
            "steel",
            "aluminium",
            "brass",
            "iron",
            "plastic"
          ],
          "description": "What it is made of."
        },
        "span": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "6 in",
            "most": "30 ft"
          },
          "description": "The largest distance between two brackets that its maker allows."
        },
        "least": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "6 in",
            "most": "60 ft"
          },
          "description": "How short it can be set, when its length can be set."
        },
        "most": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "6 in",
            "most": "60 ft"
          },
          "description": "How long it can be set, when its length can be set."
        },
        "section": {
          "$ref": "https://evenhem.example/job/1/job.schema.json#/$defs/section",
          "description": "Its section, where it is solid or a closed tube. Left out: how far it sags is not reckoned."
        },
        "splice": {
          "enum": [
            "turns",
            "stiff"
          ],
          "description": "Whether a splice can turn or is as stiff as the rod. Default turns."
        },
        "weight": {
          "type": "string",
          "pattern": "^[0-9]+(\\.[0-9]+)? ?(g/m|kg/m|oz/yd)$",
          "description": "What it weighs by its length, such as `450 g/m`. Left out: what its section and material come to."
        }
      },
      "unevaluatedProperties": false
    },
    "carrier": {
      "type": "object",
      "title": "Carrier",
      "description": "The carriers.",
      "required": [
        "at"
      ],
      "properties": {
        "at": {
          "enum": [
            "front",
            "under"
          ],
          "description": "Whether the hooks hang in front of the rod or under it."
        },
        "drop": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "-2 in",
            "most": "10 in"
          },
          "description": "From the top of the rod down to where a hook bears in a carrier."
        },
        "width": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/32 in",
            "most": "6 in"
          },
          "description": "How wide a carrier is along the rod."
        },
        "opening": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/32 in",
            "most": "2 in"
          },
          "description": "How wide its opening for a hook is."
        },
        "comesOut": {
          "type": "boolean",
          "description": "Whether carriers that are not needed can be taken out at the end of the rod."
        },
        "weight": {
          "type": "string",
          "pattern": "^[0-9]+(\\.[0-9]+)? ?(kg|g|lb|oz)$",
          "description": "What one carrier weighs, such as `5 g`."
        }
      },
      "unevaluatedProperties": false
    },
    "master": {
      "type": "object",
      "title": "MasterCarrier",
      "description": "The carriers at the leading edges, which the draw moves.",
      "properties": {
        "holes": {
          "type": "integer",
          "minimum": 1,
          "maximum": 9,
          "description": "How many holes for hooks each has."
        },
        "length": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/4 in",
            "most": "24 in"
          },
          "description": "How much of the rod each takes."
        },
        "overlap": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "24 in"
          },
          "description": "How far the arms carry the leading edges of a pair past one another; 0 without arms."
        },
        "over": {
          "enum": [
            "left",
            "right"
          ],
          "description": "Which leading edge lies in front when a pair is drawn."
        }
      },
      "unevaluatedProperties": false
    },
    "bracket": {
      "$ref": "https://evenhem.example/job/1/job.schema.json#/$defs/plate",
      "type": "object",
      "title": "EndBracket",
      "description": "The end brackets.",
      "properties": {
        "projection": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/2 in",
            "most": "24 in"
          },
          "description": "From the wall to where the hooks bear in the carriers."
        },
        "inset": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "-6 in",
            "most": "12 in"
          },
          "description": "From the end of the rod inward to the middle of the bracket; outward is negative."
        },
        "hookHoles": {
          "enum": [
            0,
            1,
            2
          ],
          "description": "How many hooks each end bracket takes: at the end of the rod, and behind it at the back."
        },
        "inner": {
          "$ref": "https://evenhem.example/job/1/job.schema.json#/$defs/secondRod",
          "description": "Of a double bracket: where it carries a second rod, behind its own."
        }
      },
      "unevaluatedProperties": false
    },
    "support": {
      "$ref": "https://evenhem.example/job/1/job.schema.json#/$defs/plate",
      "type": "object",
      "title": "TraverseSupport",
      "description": "The supports between the end brackets.",
      "properties": {
        "blocks": {
          "enum": [
            "nothing",
            "carriers",
            "masters"
          ],
          "description": "What cannot pass it. What stops carriers stops master carriers too. Default nothing."
        }
      },
      "unevaluatedProperties": false
    },
    "ceiling": {
      "type": "object",
      "title": "CeilingBracket",
      "description": "How it is fixed to a ceiling.",
      "properties": {
        "drop": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "24 in"
          },
          "description": "From the ceiling down to the top of the rod."
        },
        "holes": {
          "type": "array",
          "minItems": 1,
          "description": "The holes of each ceiling bracket.",
          "items": {
            "type": "object",
            "title": "CeilingHole",
            "description": "A hole of a ceiling bracket.",
            "required": [
              "id",
              "out"
            ],
            "properties": {
              "id": {
                "enum": [
                  "front",
                  "middle",
                  "back"
                ],
                "description": "Which hole it is."
              },
              "out": {
                "$ref": "https://evenhem.example/job/1/length.schema.json",
                "x-evenhem-plausible": {
                  "least": "-12 in",
                  "most": "12 in"
                },
                "description": "From the line of the hooks toward the room; toward the wall is negative."
              }
            },
            "unevaluatedProperties": false
          }
        },
        "screw": {
          "type": "string",
          "minLength": 1,
          "description": "The screw that its maker asks for."
        },
        "rated": {
          "type": "string",
          "pattern": "^[0-9]+(\\.[0-9]+)? ?(kg|g|lb|oz)$",
          "description": "What its maker lets one ceiling bracket carry, such as `9 kg` or `20 lb`."
        }
      },
      "unevaluatedProperties": false
    },
    "finial": {
      "type": "object",
      "title": "TraverseFinial",
      "description": "What closes each end.",
      "properties": {
        "length": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "24 in"
          },
          "description": "How far it reaches beyond the end of the rod."
        },
        "radius": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/8 in",
            "most": "12 in"
          },
          "description": "Half of its greatest thickness."
        },
        "weight": {
          "type": "string",
          "pattern": "^[0-9]+(\\.[0-9]+)? ?(kg|g|lb|oz)$",
          "description": "What one finial weighs, such as `300 g`."
        }
      },
      "unevaluatedProperties": false
    }
  },
  "unevaluatedProperties": false
} as const
