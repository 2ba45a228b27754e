import type { Length } from '@evenhem/length'
import type { Figure } from './marks.ts'
import { captionOf } from './owners.ts'
import type { Voice } from './setting.ts'

/** Words of the drawing itself; the host says them by code, like a plugin's. */
export const words = {
  en: {
    'drawing/ordered': { says: 'ordered' },
    'drawing/computed': { says: 'worked out' },
    'drawing/measured': { says: 'measured' },
    'drawing/off': { says: 'measured, out of tolerance by' },
    'drawing/unknown': { says: 'not known' },
    'drawing/decided': { says: 'decided' },
    'drawing/aside': { says: 'set aside' },
    'drawing/most': { says: 'max.' },
    'drawing/allowed': { says: 'allowed at most' },
    'drawing/in': { says: 'in' },
    'drawing/left': { says: 'left' },
    'drawing/right': { says: 'right' },
    'drawing/left-short': { says: 'left' },
    'drawing/right-short': { says: 'right' },
    'drawing/layer-inner': { says: 'inner' },
    'drawing/layer-middle': { says: 'middle' },
    'drawing/layer-outer': { says: 'outer' },
    'drawing/layer-1': { says: 'layer 1' },
    'drawing/layer-2': { says: 'layer 2' },
    'drawing/layer-3': { says: 'layer 3' },
    'drawing/layer-4': { says: 'layer 4' },
    'drawing/layer-5': { says: 'layer 5' },
    'drawing/layer-6': { says: 'layer 6' },
    'drawing/layer-7': { says: 'layer 7' },
    'drawing/layer-8': { says: 'layer 8' },
    'drawing/layer-9': { says: 'layer 9' },
    'drawing/detail': { says: 'Enlarged' },
    'drawing/pass': { says: 'pass' },
    'drawing/warn': { says: 'look' },
    'drawing/fail': { says: 'stop' },
    'drawing/legend-ordered': { says: 'ordered' },
    'drawing/legend-computed': { says: 'worked out' },
    'drawing/legend-measured': { says: 'measured' },
    'drawing/legend-off': { says: 'measured, out of tolerance' },
    'drawing/legend-unknown': { says: 'not known yet' },
    'drawing/legend-decided': { says: 'decided' },
  },
  es: {
    'drawing/ordered': { says: 'pedido' },
    'drawing/computed': { says: 'calculado' },
    'drawing/measured': { says: 'medido' },
    'drawing/off': { says: 'medido, fuera de tolerancia por' },
    'drawing/unknown': { says: 'sin dato' },
    'drawing/decided': { says: 'decidido' },
    'drawing/aside': { says: 'descartado' },
    'drawing/most': { says: 'máx.' },
    'drawing/allowed': { says: 'admitido como mucho' },
    'drawing/in': { says: 'in' },
    'drawing/left': { says: 'izquierda' },
    'drawing/right': { says: 'derecha' },
    'drawing/left-short': { says: 'izq.' },
    'drawing/right-short': { says: 'der.' },
    'drawing/layer-inner': { says: 'interior' },
    'drawing/layer-middle': { says: 'media' },
    'drawing/layer-outer': { says: 'exterior' },
    'drawing/layer-1': { says: 'capa 1' },
    'drawing/layer-2': { says: 'capa 2' },
    'drawing/layer-3': { says: 'capa 3' },
    'drawing/layer-4': { says: 'capa 4' },
    'drawing/layer-5': { says: 'capa 5' },
    'drawing/layer-6': { says: 'capa 6' },
    'drawing/layer-7': { says: 'capa 7' },
    'drawing/layer-8': { says: 'capa 8' },
    'drawing/layer-9': { says: 'capa 9' },
    'drawing/detail': { says: 'Ampliado' },
    'drawing/pass': { says: 'bien' },
    'drawing/warn': { says: 'mirar' },
    'drawing/fail': { says: 'alto' },
    'drawing/legend-ordered': { says: 'pedido' },
    'drawing/legend-computed': { says: 'calculado' },
    'drawing/legend-measured': { says: 'medido' },
    'drawing/legend-off': { says: 'medido, fuera de tolerancia' },
    'drawing/legend-unknown': { says: 'aún sin dato' },
    'drawing/legend-decided': { says: 'decidido' },
  },
} as const

const spoken = (voice: Voice, length: Length): string => {
  if (voice.speak) return voice.speak(length)
  const { text, unit } = voice.write(length)
  return unit === 'in' ? `${text} ${voice.say('drawing/in')}` : text
}

/** The number that a decision set aside: what was decided less the difference. */
export const aside = ({ value, off }: Figure): Length | undefined =>
  value === undefined || off === undefined ? undefined : ((value - off) as Length)

/** What something weighs, in words. */
export const weighed = (voice: Voice, mass: number): string => voice.weigh?.(mass) ?? `${Math.round(mass)} kg`
const toldAs = ({ value, mass }: Figure, voice: Voice): string | undefined =>
  mass !== undefined ? weighed(voice, mass) : value === undefined ? undefined : spoken(voice, value)
/** Whether there is a number to show. */
export const isKnown = ({ value, mass, state }: Figure): boolean =>
  state !== 'unknown' && (value !== undefined || mass !== undefined)

function known(figure: Figure, number: string, voice: Voice): string {
  const told = `${number}, ${voice.say(`drawing/${figure.state}`)}`
  if (figure.most !== undefined) return `${told}, ${spoken(voice, figure.most)} ${voice.say('drawing/allowed')}`
  if (figure.state === 'off' && figure.off !== undefined) return `${told} ${spoken(voice, figure.off)}`
  const set = figure.state === 'decided' ? aside(figure) : undefined
  return set === undefined ? told : `${told}, ${spoken(voice, set)} ${voice.say('drawing/aside')}`
}

/** What a figure says: its caption (or `what`), its number and how it is known. */
export function figureWords(figure: Figure, voice: Voice, what = captionOf(figure, voice.say)): string {
  const told = isKnown(figure) ? known(figure, toldAs(figure, voice) ?? '', voice) : voice.say('drawing/unknown')
  return what ? `${what}: ${told}` : told
}
