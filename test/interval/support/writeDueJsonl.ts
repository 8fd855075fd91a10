import { writeFileSync } from 'node:fs'
import { writeDueCases } from './dueCases.js'

writeFileSync('test/interval/conformance/due.jsonl', writeDueCases())
