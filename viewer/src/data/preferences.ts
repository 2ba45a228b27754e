import { type Light, lightsCss } from '@evenhem/drawing'
import type { ReadingUnit } from '@evenhem/length'
import { languages } from '../words.ts'

export type { Light } from '@evenhem/drawing'

export const lights: readonly Light[] = ['paper', 'night', 'sun']
export const units: readonly ReadingUnit[] = ['in', 'ft-in', 'mm']

/** The one after; after the last comes the first. */
export const following = <T>(list: readonly T[], now: T): T => list[(list.indexOf(now) + 1) % list.length] as T

// A browser may refuse storage altogether; a choice then lasts as long as the page.
const stored = <T extends string>(name: string, allowed: readonly T[]) => ({
  read: (): T | undefined => {
    try {
      return allowed.find((value) => value === localStorage.getItem(`evenhem/${name}`))
    } catch {
      return undefined
    }
  },
  write: (value: T): void => {
    try {
      localStorage.setItem(`evenhem/${name}`, value)
    } catch {}
  },
})

/** The light chosen on this tablet; undefined: follows the system. */
export const chosenLight = stored('light', lights)
/** The unit chosen on this tablet; undefined: the order's own. */
export const chosenUnit = stored('unit', units)

/** The language chosen on this tablet; undefined: follows the browser. */
export const chosenLanguage = stored('language', languages)

const colours = new CSSStyleSheet()
colours.replaceSync(lightsCss())

/** Shows the page in a light. */
export const shine = (light: Light): void => {
  if (!document.adoptedStyleSheets.includes(colours)) document.adoptedStyleSheets.push(colours)
  document.documentElement.dataset.light = light
}
