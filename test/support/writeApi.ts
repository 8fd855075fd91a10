import { writeFileSync } from 'node:fs'
import { readPublicApi, renderApiPage, renderApiReport } from './publicApi.js'

const api = readPublicApi()
writeFileSync('docs/api.md', renderApiPage(api))
writeFileSync('docs/api-report.txt', renderApiReport(api))
