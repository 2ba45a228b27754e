export * from './length.ts'
export * from './reckoning.ts'
export * from './written.ts'
