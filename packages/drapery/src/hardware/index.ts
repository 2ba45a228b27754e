export * from './body.ts'
export * from './brackets.ts'
export * from './ceiling.ts'
export * from './hung.ts'
