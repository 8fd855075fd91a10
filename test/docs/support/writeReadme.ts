import { readFileSync, writeFileSync } from 'node:fs'
import { updateReadme } from './readmeNumbers.js'

// `npm run generate`: the numbers of the README.
writeFileSync('README.md', updateReadme(readFileSync('README.md', 'utf8')))
