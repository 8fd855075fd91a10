import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { renderHtml, wallModel } from 'drivetrain-service/v1/card'
import { de } from 'drivetrain-service/v1/message/de'
import { en } from 'drivetrain-service/v1/message/en'
import { es } from 'drivetrain-service/v1/message/es'
import { fr } from 'drivetrain-service/v1/message/fr'
import { wallFacts } from 'drivetrain-service/v1/service'
import { parseSpecSheet, parseToolbox } from 'drivetrain-service/v1/spec'

const { resolve } = createRequire(import.meta.url)
const read = (name) =>
  JSON.parse(readFileSync(resolve(`drivetrain-service/schemas/v1/vectors/bases/${name}.json`), 'utf8'))

/** The value of a document, or an error with its findings: no card is better than a wrong one. */
function require(result) {
  if (!result.ok) throw new Error(JSON.stringify(result.findings, null, 2))
  return result.value
}

const toolbox = require(parseToolbox(read('tind-4/toolbox')))
mkdirSync('out', { recursive: true })
for (const name of ['tind-4', 'bud-3']) {
  const sheet = require(parseSpecSheet(read(`${name}/sheet`)))
  for (const variant of Object.keys(sheet.machine.variants)) {
    const facts = require(wallFacts({ sheet, identity: { variant }, toolbox }, { iso6789: '2017' }))
    for (const catalogue of [en, de, fr, es]) {
      const file = join('out', `${sheet.id}-${variant}-${catalogue.language}.html`)
      const html = renderHtml(wallModel(facts, catalogue))
      writeFileSync(file, html)
      console.log(`${file}: ${/<title>(.*?)<\/title>/.exec(html)[1]}`)
    }
  }
}
