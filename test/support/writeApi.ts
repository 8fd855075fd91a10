import { writeFileSync } from 'node:fs'
import { readPublicApi, renderApiPage, renderApiReport, renderFormulaPage } from './publicApi.js'

const api = readPublicApi()
writeFileSync('docs/api.md', renderApiPage(api))
writeFileSync('docs/formulas.md', renderFormulaPage(api))
writeFileSync('docs/api-report.txt', renderApiReport(api))
