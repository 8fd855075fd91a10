import { writeFileSync } from 'node:fs'
import { drawRooms } from './drawRooms.js'

// `npm run generate`: the picture of the architecture.
writeFileSync('docs/rooms.svg', drawRooms())
