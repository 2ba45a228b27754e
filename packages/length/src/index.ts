export * from './length.ts'
export * from './reckoning.ts'
