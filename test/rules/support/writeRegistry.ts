// Writes src/rules/allRules.ts from the files of the rules: `npm run generate`. A test fails if it is out of date.
import { writeFileSync } from 'node:fs'
import { REGISTRY_FILE, writeRegistry } from './registry.js'

writeFileSync(REGISTRY_FILE, writeRegistry())
console.log(`wrote ${REGISTRY_FILE}`)
