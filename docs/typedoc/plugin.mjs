// Puts the guides beside the API in one site: their order, their short names in the navigation, a link to the page to try it.
import { readdirSync } from 'node:fs'
import { Converter, JSX } from 'typedoc'

/** The pages of each group in the order of the navigation, each with its short name. */
const GROUPS = {
  Start: {
    'first-sheet': 'First sheet in ten minutes',
    questions: 'One question, one call',
    cli: 'Command line',
    safety: 'Safety',
    limits: 'What it does not do',
  },
  'How to': {
    embed: 'Due work in your app',
    ci: 'Check sheets in CI',
    python: 'Recipes for Python',
    sql: 'Recipes for SQL',
    store: 'Records of a fleet',
    cards: 'Print cards',
    papers: 'Present, and small papers',
    rules: 'Rules, and your own',
    languages: 'Add a language',
  },
  Subjects: {
    intervals: 'Intervals',
    torque: 'Torque',
    oil: 'Oil',
    fill: 'Filling',
    seals: 'Seals',
    procedure: 'Orders of work',
    formulas: 'Formulas and sources',
    checks: 'Outside checks',
    laws: 'Laws',
    reliability: 'Faults',
  },
  Documents: {
    documents: 'The documents',
    notation: 'Short notation',
    fields: 'All fields',
    reading: 'Reading quantities',
    units: 'Units',
  },
  Project: { api: 'All functions', decisions: 'Decisions', security: 'Security and versions' },
}

/** Each file with its name and group. A glossary is found by its name: a new language needs no line here. */
const PAGES = new Map(
  Object.entries(GROUPS).flatMap(([group, pages]) =>
    Object.entries(pages).map(([page, name]) => [`docs/${page}.md`, { name, group }]),
  ),
)
for (const file of readdirSync('docs')) {
  const language = /^glossary-([a-z]+)\.md$/.exec(file)?.[1]
  if (language === undefined) continue
  const name = `Glossary: ${new Intl.DisplayNames(['en'], { type: 'language' }).of(language)}`
  PAGES.set(`docs/${file}`, { name, group: 'Project' })
}
PAGES.set('DEVELOPERS.md', { name: 'Architecture', group: 'Project' })
PAGES.set('CHANGELOG.md', { name: 'Changelog', group: 'Project' })

/** @param {import('typedoc').Application} app */
export function load(app) {
  const forgotten = readdirSync('docs').filter((file) => file.endsWith('.md') && !PAGES.has(`docs/${file}`))
  if (forgotten.length > 0)
    throw new Error(`docs/typedoc/plugin.mjs has no place for ${forgotten.join(', ')}`)

  app.on('bootstrapEnd', () => {
    app.options.setValue('projectDocuments', [...PAGES.keys()])
    app.options.setValue('groupOrder', [...Object.keys(GROUPS), 'Modules'])
  })
  // TypeDoc reads the pages in the order given, but names each after its file.
  let next = 0
  app.converter.on(Converter.EVENT_CREATE_DOCUMENT, (_context, page) => {
    const { name, group } = [...PAGES.values()][next++]
    page.name = name
    page.frontmatter.group = group
  })
  // A wide table scrolls on a phone, so the keyboard must reach it.
  app.renderer.on('endPage', (page) => {
    page.contents = page.contents?.replaceAll('<table>', '<table tabindex="0">')
  })
  app.renderer.hooks.on('sidebar.begin', (context) =>
    JSX.createElement(
      'p',
      { class: 'try' },
      JSX.createElement('a', { href: context.relativeURL('try/index.html') }, 'Try it in the browser'),
    ),
  )
}
