export { type CatalogueFile, catalogueFiles, cataloguesOf } from './catalogues.ts'
export { type JobSource, jobFile, jobSource } from './job.ts'
export { type Reporter, type ReportWishes, reporter, tapeFor } from './report.ts'
export { buildServer, builtViewer, listen, type ServerOptions } from './server.ts'
