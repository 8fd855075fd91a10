import { writeFileSync } from 'node:fs'
import { renderStylePage, STYLE_PAGE } from './stylePage.js'

writeFileSync(STYLE_PAGE, renderStylePage())
