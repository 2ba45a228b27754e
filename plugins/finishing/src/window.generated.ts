// Generated from plugins/finishing/src/window.schema.json by `npm run generate`.
/** How all draperies of a window are finished, where their treatments do not say it themselves. */
export interface FinishingWish {
  /** Whether the draperies are to be steamed. Left out: they are where their cloth and its label allow it. */
  readonly steam?: boolean
  /** For how many hours the dressed folds stay tied; 0: they are not tied. Usual are 24 to 72 (common practice, no source). Left out: 48. */
  readonly tieHours?: number
}

export const windowSchema = {
  "$schema": "https://json-schema.org/draft/2020-12/schema",
  "$id": "https://evenhem.example/finishing/1/window.schema.json",
  "title": "FinishingWish",
  "description": "How all draperies of a window are finished, where their treatments do not say it themselves.",
  "type": "object",
  "properties": {
    "steam": {
      "type": "boolean",
      "description": "Whether the draperies are to be steamed. Left out: they are where their cloth and its label allow it."
    },
    "tieHours": {
      "type": "integer",
      "minimum": 0,
      "maximum": 336,
      "description": "For how many hours the dressed folds stay tied; 0: they are not tied. Usual are 24 to 72 (common practice, no source). Left out: 48."
    }
  },
  "unevaluatedProperties": false
} as const
