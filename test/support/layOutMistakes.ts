import { MISTAKES } from './mistakes.js'
import { writeMistakes } from './writeMistakes.js'

writeMistakes()
console.log(`wrote ${MISTAKES.length} mistakes to examples/mistakes.json`)
