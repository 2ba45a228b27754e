// Generated from plugins/finishing/src/part.schema.json by `npm run generate`.
/** How the draperies of a treatment are finished, and what was recorded of that. */
export interface Finishing {
  /** Whether the draperies are to be steamed. Left out: they are where their cloth and its label allow it. */
  readonly steam?: boolean
  /** For how many hours the dressed folds stay tied; 0: they are not tied. Usual are 24 to 72 (common practice, no source). Left out: 48. */
  readonly tieHours?: number
  /** What was recorded when they were finished. */
  readonly found?: FinishingFound
}

/** What was recorded when they were finished. */
export interface FinishingFound {
  /** What steam left where it was tried, inside a hem or a return. */
  readonly steamTried?: 'no mark' | 'mark'
  /** Whether the folds were tied. */
  readonly foldsTied?: boolean
  /** The day on which the ties come off. */
  readonly untieOn?: string
  /** Who is content with how the draperies hang. */
  readonly content?: 'both' | 'installer only' | 'customer only' | 'neither'
}

export const partSchema = {
  "$schema": "https://json-schema.org/draft/2020-12/schema",
  "$id": "https://evenhem.example/finishing/1/part.schema.json",
  "title": "Finishing",
  "description": "How the draperies of a treatment are finished, and what was recorded of that.",
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
    },
    "found": {
      "type": "object",
      "title": "FinishingFound",
      "description": "What was recorded when they were finished.",
      "properties": {
        "steamTried": {
          "enum": [
            "no mark",
            "mark"
          ],
          "description": "What steam left where it was tried, inside a hem or a return."
        },
        "foldsTied": {
          "type": "boolean",
          "description": "Whether the folds were tied."
        },
        "untieOn": {
          "type": "string",
          "format": "date",
          "description": "The day on which the ties come off."
        },
        "content": {
          "enum": [
            "both",
            "installer only",
            "customer only",
            "neither"
          ],
          "description": "Who is content with how the draperies hang."
        }
      },
      "unevaluatedProperties": false
    }
  },
  "unevaluatedProperties": false
} as const
