import { readFileSync, writeFileSync } from 'node:fs'
import { packageExports } from './packageExports.js'

const manifest = JSON.parse(readFileSync('package.json', 'utf8'))
writeFileSync('package.json', `${JSON.stringify({ ...manifest, exports: packageExports() }, null, 2)}\n`)
