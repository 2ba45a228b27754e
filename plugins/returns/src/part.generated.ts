// Generated from plugins/returns/src/part.schema.json by `npm run generate`.
import type { Length } from '@evenhem/length'

/** How the outer edges of a treatment are held at the wall. */
export interface Returns {
  /** The left outer edge. */
  readonly left?: ReturnEnd
  /** The right outer edge. */
  readonly right?: ReturnEnd
}

/** How an outer edge is held at the wall. */
export interface ReturnEnd {
  /** What holds it: an angle or an eye screwed to the wall takes the last hook; hook and loop or a magnet holds the edge; a rod that bends back to the wall or a wall at its side needs nothing more; none leaves the edge free. */
  readonly held: 'wall angle' | 'screw eye' | 'hook and loop' | 'magnet' | 'returned rod' | 'side wall' | 'none'
  /** From where the last hook bears down to the hole of the angle or the eye. */
  readonly hole?: Length
}

export const partSchema = {
  "$schema": "https://json-schema.org/draft/2020-12/schema",
  "$id": "https://evenhem.example/returns/1/part.schema.json",
  "title": "Returns",
  "description": "How the outer edges of a treatment are held at the wall.",
  "type": "object",
  "properties": {
    "left": {
      "$ref": "#/$defs/end",
      "description": "The left outer edge."
    },
    "right": {
      "$ref": "#/$defs/end",
      "description": "The right outer edge."
    }
  },
  "unevaluatedProperties": false,
  "$defs": {
    "end": {
      "type": "object",
      "title": "ReturnEnd",
      "description": "How an outer edge is held at the wall.",
      "required": [
        "held"
      ],
      "properties": {
        "held": {
          "enum": [
            "wall angle",
            "screw eye",
            "hook and loop",
            "magnet",
            "returned rod",
            "side wall",
            "none"
          ],
          "description": "What holds it: an angle or an eye screwed to the wall takes the last hook; hook and loop or a magnet holds the edge; a rod that bends back to the wall or a wall at its side needs nothing more; none leaves the edge free."
        },
        "hole": {
          "$ref": "https://evenhem.example/job/1/length.schema.json",
          "x-evenhem-plausible": {
            "least": "-12 in",
            "most": "12 in"
          },
          "description": "From where the last hook bears down to the hole of the angle or the eye."
        }
      },
      "unevaluatedProperties": false
    }
  }
} as const
