import { findBrokenLinks } from './findBrokenLinks.js'

// The last step of `npm run docs`: a link that leads nowhere fails the build.
const { links, broken } = findBrokenLinks('docs/site')
for (const link of broken) console.error(`broken link: ${link}`)
console.log(`docs/site: ${links} links, ${broken.length} broken; open index.html`)
if (links === 0 || broken.length > 0) process.exitCode = 1
