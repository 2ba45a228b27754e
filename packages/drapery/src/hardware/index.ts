export * from './brackets.ts'
export * from './hung.ts'
