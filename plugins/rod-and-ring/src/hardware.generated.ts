// Generated from plugins/rod-and-ring/src/hardware.schema.json by `npm run generate`.
import type { Length } from '@evenhem/length'

/** A short name, unique in its list: small letters, digits and hyphens. */
export type Id = string

/** A decorative rod with rings on brackets. */
export interface RodAndRing {
  /** The short name by which treatments use this hardware. */
  readonly id: Id
  /** A decorative rod with rings. */
  readonly kind: 'rod-and-ring'
  /** What people call it. */
  readonly name: string
  /** Where this entry was taken from. */
  readonly catalogue?: Catalogue
  /** The rod. */
  readonly rod: Rod
  /** The rings. */
  readonly ring: Ring
  /** The end brackets. */
  readonly bracket: Bracket
  /** The supports between the end brackets. */
  readonly support?: RodSupport
  /** The finials. */
  readonly finial?: Finial
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
export interface Rod {
  /** How thick it is. */
  readonly diameter: Length
  /** What it is made of. */
  readonly material?: 'wood' | 'steel' | 'aluminium' | 'brass' | 'iron' | 'stainless' | 'acrylic'
  /** The largest distance between two brackets that its maker allows. */
  readonly span?: Length
  /** How thick its wall is, when it is a tube. */
  readonly wall?: Length
  /** Its section, where it is no round rod or tube. */
  readonly section?: Section
  /** What wood it is. Left out: the softest and the heaviest are reckoned. */
  readonly species?:
    | 'Oak, northern red'
    | 'Oak, white'
    | 'Maple, sugar'
    | 'Maple, red'
    | 'Walnut, black'
    | 'Cherry, black'
    | 'Ash, white'
    | 'Beech, American'
    | 'Birch, yellow'
    | 'Yellow-poplar'
    | 'Basswood, American'
    | 'Alder, red'
    | 'Douglas-fir, coast'
    | 'Pine, loblolly'
    | 'Pine, longleaf'
    | 'Pine, eastern white'
    | 'Pine, ponderosa'
    | 'Pine, sugar'
    | 'Pine, western white'
    | 'Spruce, Sitka'
    | 'Spruce, white'
    | 'Spruce, Engelmann'
    | 'Hemlock, western'
    | 'Cedar, western redcedar'
  /** Of a rod that is pushed together: the thinner tube. */
  readonly inner?: Section
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

/** The rings. */
export interface Ring {
  /** From the top of the rod down to where a hook bears in the eye of a ring that hangs on it. */
  readonly eyeDrop?: Length
  /** How wide a ring is along the rod. */
  readonly width?: Length
  /** From the middle of a bracket to the ring parked beside it. */
  readonly room?: Length
  /** How wide it is inside. */
  readonly inside?: Length
  /** How wide its eye is inside. */
  readonly eyeOpening?: Length
  /** Whether it is closed all round or open at the top, so that it passes a support. Default closed. */
  readonly passes?: 'closed' | 'passing'
  /** What one ring weighs, such as `45 g`. */
  readonly weight?: string
}

/** The end brackets. */
export interface Bracket {
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
  /** From the wall to the middle of the rod, where the hooks bear. */
  readonly projection?: Length
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
export interface RodSupport {
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
}

/** The finials. */
export interface Finial {
  /** How far it reaches beyond the end of the rod. */
  readonly length?: Length
  /** Half of its greatest thickness. */
  readonly radius?: Length
  /** What one finial weighs, such as `300 g`. */
  readonly weight?: string
}

export const hardwareSchema = {
  "$schema": "https://json-schema.org/draft/2020-12/schema",
  "$id": "https://evenhem.example/rod-and-ring/1/hardware.schema.json",
  "title": "RodAndRing",
  "description": "A decorative rod with rings on brackets.",
  "$ref": "https://evenhem.example/job/1/job.schema.json#/$defs/hardware",
  "type": "object",
  "required": [
    "rod",
    "ring",
    "bracket"
  ],
  "properties": {
    "kind": {
      "const": "rod-and-ring",
      "description": "A decorative rod with rings."
    },
    "rod": {
      "type": "object",
      "title": "Rod",
      "description": "The rod.",
      "required": [
        "diameter"
      ],
      "properties": {
        "diameter": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/4 in",
            "most": "6 in"
          },
          "description": "How thick it is."
        },
        "material": {
          "enum": [
            "wood",
            "steel",
            "aluminium",
            "brass",
            "iron",
            "stainless",
            "acrylic"
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
        "wall": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/64 in",
            "most": "2 in"
          },
          "description": "How thick its wall is, when it is a tube."
        },
        "section": {
          "$ref": "https://evenhem.example/job/1/job.schema.json#/$defs/section",
          "description": "Its section, where it is no round rod or tube."
        },
        "species": {
          "enum": [
            "Oak, northern red",
            "Oak, white",
            "Maple, sugar",
            "Maple, red",
            "Walnut, black",
            "Cherry, black",
            "Ash, white",
            "Beech, American",
            "Birch, yellow",
            "Yellow-poplar",
            "Basswood, American",
            "Alder, red",
            "Douglas-fir, coast",
            "Pine, loblolly",
            "Pine, longleaf",
            "Pine, eastern white",
            "Pine, ponderosa",
            "Pine, sugar",
            "Pine, western white",
            "Spruce, Sitka",
            "Spruce, white",
            "Spruce, Engelmann",
            "Hemlock, western",
            "Cedar, western redcedar"
          ],
          "description": "What wood it is. Left out: the softest and the heaviest are reckoned."
        },
        "inner": {
          "$ref": "https://evenhem.example/job/1/job.schema.json#/$defs/section",
          "description": "Of a rod that is pushed together: the thinner tube."
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
    "ring": {
      "type": "object",
      "title": "Ring",
      "description": "The rings.",
      "properties": {
        "eyeDrop": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/4 in",
            "most": "10 in"
          },
          "description": "From the top of the rod down to where a hook bears in the eye of a ring that hangs on it."
        },
        "width": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/32 in",
            "most": "12 in"
          },
          "description": "How wide a ring is along the rod."
        },
        "room": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "0 in",
            "most": "8 in"
          },
          "description": "From the middle of a bracket to the ring parked beside it."
        },
        "inside": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/4 in",
            "most": "8 in"
          },
          "description": "How wide it is inside."
        },
        "eyeOpening": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/32 in",
            "most": "2 in"
          },
          "description": "How wide its eye is inside."
        },
        "passes": {
          "enum": [
            "closed",
            "passing"
          ],
          "description": "Whether it is closed all round or open at the top, so that it passes a support. Default closed."
        },
        "weight": {
          "type": "string",
          "pattern": "^[0-9]+(\\.[0-9]+)? ?(kg|g|lb|oz)$",
          "description": "What one ring weighs, such as `45 g`."
        }
      },
      "unevaluatedProperties": false
    },
    "bracket": {
      "$ref": "https://evenhem.example/job/1/job.schema.json#/$defs/plate",
      "type": "object",
      "title": "Bracket",
      "description": "The end brackets.",
      "properties": {
        "projection": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "1/2 in",
            "most": "24 in"
          },
          "description": "From the wall to the middle of the rod, where the hooks bear."
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
      "title": "RodSupport",
      "description": "The supports between the end brackets.",
      "unevaluatedProperties": false
    },
    "finial": {
      "type": "object",
      "title": "Finial",
      "description": "The finials.",
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
