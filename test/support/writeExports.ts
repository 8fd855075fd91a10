import { readFileSync, writeFileSync } from 'node:fs'
import { listLanguages, writeLanguageEntry } from './languageEntry.js'
import { packageExports } from './packageExports.js'

for (const language of listLanguages('src/message'))
  writeFileSync(`src/v1/message/${language}.ts`, writeLanguageEntry(language))

const manifest = JSON.parse(readFileSync('package.json', 'utf8'))
writeFileSync('package.json', `${JSON.stringify({ ...manifest, exports: packageExports() }, null, 2)}\n`)
