// Stands in the place of the process that decodes: does what the name of the file says. Answers how many files it has open.
let open = 0
process.on('message', ({ id, file, isAlone }) => {
  if (/heavy|\.heic$/.test(file) && !isAlone) return void process.send({ is: 'done', id, cleaned: 'heavy', peak: 1 })
  open++
  if (file.includes('hangs')) return
  if (file.includes('crashes')) return void process.kill(process.pid, 'SIGSEGV')
  if (file.includes('eats')) return void process.kill(process.pid, 'SIGKILL')
  const cleaned = { large: new Uint8Array([open]), small: new Uint8Array([process.pid % 251]) }
  setTimeout(() => {
    open--
    process.send({ is: 'done', id, cleaned, peak: 1 })
  }, 20)
})
process.once('disconnect', () => process.exit())
process.send({ is: 'ready' })
