import { words as drawingWords } from '@evenhem/drawing'
import { type Length, metre, type Tape, type Written, yard } from '@evenhem/length'
import { createSay, type Say, wordsOf } from '@evenhem/planner/say'
import type { Values } from '@evenhem/plugin'
import { plugins } from '@evenhem/plugins'
import { type Language, type Voice, voiceIn } from './voice.ts'

/** How results are said at a terminal: a length always with its unit, and with `≈` before it when the tape's step rounded it. */
export interface Speech {
  readonly language: Language
  /** The command line's own sentences. */
  readonly voice: Voice
  readonly say: (code: string, values?: Values) => string
  readonly help: (code: string, values?: Values) => string | undefined
  readonly length: (length: Length) => string
  /** A length of cloth, by the yard or by the metre, up to a hundredth: cloth that is not shown is not bought. */
  readonly cloth: (length: Length) => string
  readonly weight: (kilograms: number) => string
  readonly number: (value: number) => string
  /** A length as a drawing sets it. */
  readonly written: (length: Length) => Written
}

function clothLength(exact: Length, { unit }: Tape): string {
  const [size, name] = unit === 'in' || unit === 'ft-in' ? [yard, 'yd'] : [metre, 'm']
  const shown = Math.ceil((exact * 100) / size - 1e-6) / 100
  return `${Math.abs(shown * size - exact) < 1 ? '' : '≈ '}${shown} ${name}`
}

export function speechFor(tape: Tape, language: Language): Speech {
  const said: Say = createSay({ words: [...wordsOf(plugins), drawingWords], language, tape })
  const length = (exact: Length): string => {
    const { text, unit, off } = said.length(exact)
    return `${off === 0 ? '' : '≈ '}${text}${unit === 'in' ? ' in' : ''}`
  }
  const withUnits = (values: Values = {}): Values =>
    Object.fromEntries(
      Object.entries(values).map(([name, value]) => [
        name,
        typeof value === 'object' && 'length' in value ? length(value.length) : value,
      ]),
    )
  return {
    language,
    voice: voiceIn(language),
    length,
    cloth: (exact) => clothLength(exact, tape),
    weight: (mass) => said.quantity({ mass }),
    number: (ratio) => said.quantity({ ratio }),
    written: said.length,
    say: (code, values) => said.say(code, withUnits(values)),
    help: (code, values) => said.help(code, withUnits(values)),
  }
}
