// Put first into the page where a browser's driver tells nothing of it: keeps what the page complains of until the test asks.
const told = []
self.told = told
const tell = (...words) => told.push(words.join(' '))

addEventListener('error', ({ message, target }) => tell(message ?? `${target.localName} could not be loaded`), true)
addEventListener('unhandledrejection', ({ reason }) => tell('rejected:', reason))
addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
  tell('refused:', violatedDirective, blockedURI),
)
console.error = tell
