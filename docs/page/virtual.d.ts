// Modules that the build makes: see buildPage.ts.
declare module 'virtual:examples' {
  export const examples: readonly import('./index.js').Example[]
}
declare module 'virtual:languages' {
  /** Languages beside English, each loaded when it is chosen. */
  export const languages: {
    readonly [tag: string]: () => Promise<import('../../src/v1/message.js').Catalogue>
  }
}
declare module 'virtual:help' {
  export const help: {
    readonly [Name in import('./readTexts.js').TextName]: import('./schemaHelp.js').SchemaHelp
  }
}
