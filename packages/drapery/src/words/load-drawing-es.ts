import type { Words } from '@evenhem/plugin'
import type { loadDrawingWords } from './load-drawing.ts'
import { one } from './sentence.ts'

export const loadDrawingWordsEs: Readonly<Record<keyof typeof loadDrawingWords, Words[string]>> = {
  'drapery/loads-steep-1': one('Las alturas se dibujan como los anchos.'),
  'drapery/loads-steep-2': one('La comba se dibuja 2 veces más empinada que los anchos.'),
  'drapery/loads-steep-5': one('La comba se dibuja 5 veces más empinada que los anchos.'),
  'drapery/loads-steep-10': one('La comba se dibuja 10 veces más empinada que los anchos.'),
  'drapery/loads-steep-20': one('La comba se dibuja 20 veces más empinada que los anchos.'),
  'drapery/loads-steep-50': one('La comba se dibuja 50 veces más empinada que los anchos.'),
  'drapery/when-drawn-lowest': one('La barra en su punto más bajo: los paños cerrados.'),
  'drapery/when-stacked-lowest': one('La barra en su punto más bajo: los paños abiertos.'),
  'drapery/when-between-lowest': one('La barra en su punto más bajo: los paños a medio correr.'),
  'drapery/bracket-holds-it': one('sostiene'),
  'drapery/bracket-over': one('carga más de lo que sostiene'),
  'drapery/bracket-lifts': one('la barra se levanta'),
  'drapery/bracket-not-known': one('no se sabe si sostiene'),
  'drapery/sags-at-most': one('peor comba'),
  'drapery/sags-too-far': one('se comba más de lo admitido'),
}
