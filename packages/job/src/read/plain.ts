import { walk } from './names.ts'
import { scan } from './scan.ts'

/** Why a text is not plain JSON: no JSON at all, nested too deep, or not what reading it would give back (a name twice, an odd number). */
export type NotPlain = 'no-json' | 'too-deep' | 'odd'

/** Reads JSON that was sent: looked over for depth before it is parsed, and refused where reading would change it in silence. Never throws. */
export function readPlain(text: string): { readonly value: unknown } | { readonly not: NotPlain } {
  const { tooDeep, names, odd } = scan(text)
  if (tooDeep !== undefined) return { not: 'too-deep' }
  try {
    const value: unknown = JSON.parse(text)
    return odd || walk(value).names !== names ? { not: 'odd' } : { value }
  } catch {
    return { not: 'no-json' }
  }
}
