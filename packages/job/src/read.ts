export {
  type CatalogueContent,
  cataloguesNamed,
  isCatalogue,
  type ReadCatalogueFile,
  readCatalogue,
  type UnreadCatalogue,
} from './read/catalogue-file.ts'
export { mayBeCatalogue } from './read/catalogues.ts'
export { catalogueSchemaOf, schemaOf } from './read/composed.ts'
export type { Diagnostic } from './read/diagnostics.ts'
export { editAt } from './read/edits.ts'
export {
  type AdditionFormat,
  type Extensions,
  extensionsOf,
  type KindFormat,
  type PluginFormat,
  type Upgrade,
} from './read/extensions.ts'
export type { Severity, Values } from './read/finding.ts'
export { type ReadJob, type ReadOptions, readEntry, readJob } from './read/job-file.ts'
export { nearest } from './read/near.ts'
export { type NotPlain, readPlain } from './read/plain.ts'
export { type Pointer, pointerOf } from './read/pointers.ts'
export type { EntryRead, RefusedEntry } from './read/readings.ts'
export { englishLabels, type Labels, type Said, type Say, sayEnglish, saySpanish, spanishLabels } from './read/say.ts'
export type { JsonSchema } from './read/schemas.ts'
export { diagnosticsJson, formatDiagnostics, type ShowOptions } from './read/shown.ts'
export { harmless } from './read/width.ts'
export { type JobCode, jobWords } from './read/words.ts'
export { spanishJobWords } from './read/words-es.ts'
