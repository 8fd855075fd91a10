import { writeFileSync } from 'node:fs'
import { renderChecks } from './outsideChecks.js'

// `npm run generate`: the index of outside checks.
writeFileSync('docs/checks.md', renderChecks())
