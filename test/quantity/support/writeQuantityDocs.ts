import { writeFileSync } from 'node:fs'
import { readingPage, unitsPage } from './quantityDocs.js'

writeFileSync('docs/units.md', unitsPage())
writeFileSync('docs/reading.md', readingPage())
