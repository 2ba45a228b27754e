export * from './contract.ts'
export * from './collected.ts'
