// After `npm ci` in a checkout: builds, so that `npx evenhem …` works at once. An install never fails because of it.
import { spawnSync } from 'node:child_process'

const { status } = spawnSync('npm run -s build', { stdio: 'inherit', shell: true })
if (status !== 0)
  console.error(
    '\nEvenhem is installed, but it could not be built. Tests need no build; for `npx evenhem` mend the lines above and run `npm run build`.',
  )
