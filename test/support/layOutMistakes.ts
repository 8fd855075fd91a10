import { MISTAKES } from './mistakes.js'
import { writeMistakes } from './writeMistakes.js'

writeMistakes()
console.log(`wrote ${MISTAKES.length} folders to examples/mistakes`)
