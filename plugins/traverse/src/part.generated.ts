// Generated from plugins/traverse/src/part.schema.json by `npm run generate`.
/** What an order says of the carriers of a treatment. */
export interface TraversePart {
  /** How many carriers are in the rod for each panel, master carriers not counted. */
  readonly carriers?: PackedCarriers
}

/** How many carriers are in the rod for each panel, master carriers not counted. */
export interface PackedCarriers {
  /** For the panel that opens to the left. */
  readonly left?: number
  /** For the panel that opens to the right. */
  readonly right?: number
}

export const partSchema = {
  "$schema": "https://json-schema.org/draft/2020-12/schema",
  "$id": "https://evenhem.example/traverse/1/part.schema.json",
  "title": "TraversePart",
  "description": "What an order says of the carriers of a treatment.",
  "type": "object",
  "properties": {
    "carriers": {
      "type": "object",
      "title": "PackedCarriers",
      "description": "How many carriers are in the rod for each panel, master carriers not counted.",
      "properties": {
        "left": {
          "type": "integer",
          "minimum": 0,
          "maximum": 2000,
          "description": "For the panel that opens to the left."
        },
        "right": {
          "type": "integer",
          "minimum": 0,
          "maximum": 2000,
          "description": "For the panel that opens to the right."
        }
      },
      "unevaluatedProperties": false
    }
  },
  "unevaluatedProperties": false
} as const
