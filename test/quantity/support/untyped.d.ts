declare module 'js-quantities' {
  interface Quantity {
    readonly scalar: number
    toBase(): Quantity
    to(unit: string): Quantity
    units(): string
  }
  export default function Qty(text: string): Quantity
  export default function Qty(value: number, unit: string): Quantity
}

declare module 'unitmath' {
  interface Quantity {
    toSI(): Quantity
    to(unit: string): Quantity
    toString(options?: { precision: number }): string
  }
  export default function unitmath(text: string): Quantity
  export default function unitmath(value: number, unit: string): Quantity
}

declare module 'convert-units2' {
  export default function convert(value: number): {
    from(unit: string): { to(unit: string): number }
  }
}
