// Writes the manifest of rules and the table in docs/rules.md: `npm run generate`.
// A test fails if it is out of date.
import { readFileSync, writeFileSync } from 'node:fs'
import { MANIFEST_FILE, TABLE_FILE, writeManifest, writeTable } from './manifest.js'

writeFileSync(MANIFEST_FILE, writeManifest())
writeFileSync(TABLE_FILE, writeTable(readFileSync(TABLE_FILE, 'utf8')))
console.log(`wrote ${MANIFEST_FILE} and ${TABLE_FILE}`)
