export { type JobSource, jobFile, jobSource } from './job.ts'
export { buildServer, listen, type ServerOptions } from './server.ts'
