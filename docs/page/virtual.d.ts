// Modules that the build makes: see buildPage.ts.
declare module 'virtual:examples' {
  export const examples: readonly import('./index.js').Example[]
}
declare module 'virtual:languages' {
  /** Languages beside English, each loaded when it is chosen. */
  export const languages: {
    readonly [tag: string]: () => Promise<{
      readonly catalogue: import('../../src/v1/message.js').Catalogue
      readonly labels: import('./labels/labels.js').PageLabels
    }>
  }
}
declare module 'virtual:question-languages' {
  /** The same for the page of one question, which needs the texts of calculations alone. */
  export const languages: {
    readonly [tag: string]: () => Promise<{
      readonly messages: import('../../src/v1/message.js').Messages
      readonly labels: import('./labels/labels.js').QuestionLabels
    }>
  }
}
declare module 'virtual:help' {
  export const help: {
    readonly [Name in import('./readTexts.js').TextName]: import('./schemaHelp.js').SchemaHelp
  }
}
