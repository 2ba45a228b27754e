// Generated from plugins/rod-and-ring/src/part.schema.json by `npm run generate`.
/** What an order says of the rings of a treatment. */
export interface RodAndRingPart {
  /** How many rings were packed. */
  readonly rings?: number
}

export const partSchema = {
  "$schema": "https://json-schema.org/draft/2020-12/schema",
  "$id": "https://evenhem.example/rod-and-ring/1/part.schema.json",
  "title": "RodAndRingPart",
  "description": "What an order says of the rings of a treatment.",
  "type": "object",
  "properties": {
    "rings": {
      "type": "integer",
      "minimum": 0,
      "maximum": 2000,
      "description": "How many rings were packed."
    }
  },
  "unevaluatedProperties": false
} as const
