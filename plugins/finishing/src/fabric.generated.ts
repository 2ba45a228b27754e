// Generated from plugins/finishing/src/fabric.schema.json by `npm run generate`.
/** What the care label and the supplier say about a fabric, as far as it matters for steaming and dressing. The label rules over what is usual for its fibres. */
export interface FabricCare {
  /** The iron on the care label: its dots, or crossed out. One dot is without steam. */
  readonly iron?: 'three dots' | 'two dots' | 'one dot' | 'crossed out'
  /** The words of the care label on steam: steam without pressing, or none in any form. */
  readonly steam?: 'steam only' | 'no steam'
  /** The circle for professional dry cleaning on the care label: its letter, or crossed out. */
  readonly dryCleaning?: 'P' | 'F' | 'crossed out'
  /** The circle for professional wet cleaning on the care label. */
  readonly wetCleaning?: 'W' | 'crossed out'
  /** The bars under the circle: one is mild, two are very mild. */
  readonly mildness?: 'mild' | 'very mild'
  /** Whether the fabric has a pile, which steam and hands can crush. */
  readonly pile?: 'velvet' | 'none'
  /** Whether its back is coated, as of a blackout lining. */
  readonly coated?: boolean
  /** Whether water leaves spots on it, by its supplier. */
  readonly waterSpots?: boolean
  /** Whether its supplier allows an alcohol-based wrinkle relaxer. Left out: not known, and none is used. */
  readonly relaxer?: 'allowed' | 'not allowed'
}

export const fabricSchema = {
  "$schema": "https://json-schema.org/draft/2020-12/schema",
  "$id": "https://evenhem.example/finishing/1/fabric.schema.json",
  "title": "FabricCare",
  "description": "What the care label and the supplier say about a fabric, as far as it matters for steaming and dressing. The label rules over what is usual for its fibres.",
  "type": "object",
  "properties": {
    "iron": {
      "enum": [
        "three dots",
        "two dots",
        "one dot",
        "crossed out"
      ],
      "description": "The iron on the care label: its dots, or crossed out. One dot is without steam."
    },
    "steam": {
      "enum": [
        "steam only",
        "no steam"
      ],
      "description": "The words of the care label on steam: steam without pressing, or none in any form."
    },
    "dryCleaning": {
      "enum": [
        "P",
        "F",
        "crossed out"
      ],
      "description": "The circle for professional dry cleaning on the care label: its letter, or crossed out."
    },
    "wetCleaning": {
      "enum": [
        "W",
        "crossed out"
      ],
      "description": "The circle for professional wet cleaning on the care label."
    },
    "mildness": {
      "enum": [
        "mild",
        "very mild"
      ],
      "description": "The bars under the circle: one is mild, two are very mild."
    },
    "pile": {
      "enum": [
        "velvet",
        "none"
      ],
      "description": "Whether the fabric has a pile, which steam and hands can crush."
    },
    "coated": {
      "type": "boolean",
      "description": "Whether its back is coated, as of a blackout lining."
    },
    "waterSpots": {
      "type": "boolean",
      "description": "Whether water leaves spots on it, by its supplier."
    },
    "relaxer": {
      "enum": [
        "allowed",
        "not allowed"
      ],
      "description": "Whether its supplier allows an alcohol-based wrinkle relaxer. Left out: not known, and none is used."
    }
  },
  "unevaluatedProperties": false
} as const
