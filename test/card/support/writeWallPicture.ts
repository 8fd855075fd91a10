import { writeFileSync } from 'node:fs'
import { drawWallPicture } from './drawWallPicture.js'

// `npm run generate`: the picture of the README.
writeFileSync('docs/wall-card.svg', drawWallPicture())
