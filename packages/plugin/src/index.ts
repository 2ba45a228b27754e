export * from './contract.ts'
export * from './collected.ts'
export * from './message.ts'
