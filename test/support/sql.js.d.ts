declare module 'sql.js' {
  /** SQLite in WebAssembly: the parts that the tests use. */
  interface Sqlite {
    readonly exec: (
      sql: string,
    ) => readonly { readonly columns: readonly string[]; readonly values: readonly (readonly unknown[])[] }[]
    readonly close: () => void
  }
  export default function init(): Promise<{ readonly Database: new () => Sqlite }>
}
