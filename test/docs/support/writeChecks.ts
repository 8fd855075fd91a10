import { writeFileSync } from 'node:fs'
import { renderLaws } from './lawsPage.js'
import { renderChecks } from './outsideChecks.js'

// `npm run generate`: the index of outside checks, and the laws by function.
writeFileSync('docs/checks.md', renderChecks())
writeFileSync('docs/laws.md', renderLaws())
