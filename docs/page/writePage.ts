import { buildPage } from './buildPage.js'

// `npm run page`: writes the pages where `npm run docs` collects what is published.
await buildPage('docs/site/try')
console.log('docs/site/try: open index.html through any file server')
