// Modules that the build makes: see buildPage.ts.
declare module 'page:examples' {
  export const examples: readonly import('./index.js').Example[]
}
declare module 'page:languages' {
  /** Languages beside English, each loaded when it is chosen. */
  export const languages: {
    readonly [tag: string]: () => Promise<import('../../src/v1/message.js').Catalogue>
  }
}
declare module 'page:help' {
  export const help: {
    readonly [Name in import('./readTexts.js').TextName]: import('./schemaHelp.js').SchemaHelp
  }
}
