import type { Words } from '@evenhem/plugin'
import { aroundWords } from './around.ts'
import { aroundWordsEs } from './around-es.ts'
import { checkInWords } from './check-in.ts'
import { checkInWordsEs } from './check-in-es.ts'
import { checkWords } from './checks.ts'
import { checkWordsEs } from './checks-es.ts'
import { layerWords } from './layers.ts'
import { layerWordsEs } from './layers-es.ts'
import { loadDrawingWords } from './load-drawing.ts'
import { loadDrawingWordsEs } from './load-drawing-es.ts'
import { loadWords } from './loads.ts'
import { loadWordsEs } from './loads-es.ts'
import { nameWords } from './names.ts'
import { nameWordsEs } from './names-es.ts'
import { operationWords } from './operation.ts'
import { operationWordsEs } from './operation-es.ts'
import { reportWords } from './report.ts'
import { reportWordsEs } from './report-es.ts'
import { rodWords } from './rods.ts'
import { rodWordsEs } from './rods-es.ts'
import { takeoffWords } from './takeoff.ts'
import { takeoffWordsEs } from './takeoff-es.ts'
import { transferWords } from './transfer.ts'
import { transferWordsEs } from './transfer-es.ts'
import { hookWords, trueUpWords } from './true-up.ts'
import { hookWordsEs, trueUpWordsEs } from './true-up-es.ts'
import { workWords } from './work.ts'
import { workWordsEs } from './work-es.ts'

const en = {
  ...nameWords,
  ...checkWords,
  ...aroundWords,
  ...workWords,
  ...reportWords,
  ...rodWords,
  ...layerWords,
  ...checkInWords,
  ...operationWords,
  ...transferWords,
  ...takeoffWords,
  ...trueUpWords,
  ...loadWords,
  ...loadDrawingWords,
}
const es: Readonly<Record<keyof typeof en, Words[string]>> = {
  ...nameWordsEs,
  ...checkWordsEs,
  ...aroundWordsEs,
  ...workWordsEs,
  ...reportWordsEs,
  ...rodWordsEs,
  ...layerWordsEs,
  ...checkInWordsEs,
  ...operationWordsEs,
  ...transferWordsEs,
  ...takeoffWordsEs,
  ...trueUpWordsEs,
  ...loadWordsEs,
  ...loadDrawingWordsEs,
}

export const words: Readonly<Record<string, Words>> = { en: { ...en, ...hookWords }, es: { ...es, ...hookWordsEs } }
