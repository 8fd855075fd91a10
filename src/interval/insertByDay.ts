interface DatedItem {
  readonly day: number
  readonly shown?: number
}

/** Inserts an item sorted by day, then by reading; equal items keep their order. */
export function insertByDay<Item extends DatedItem>(list: Item[], item: Item): void {
  for (let at = list.push(item) - 1; at > 0; at--) {
    const before = list[at - 1]
    if (!before || before.day < item.day) return
    if (before.day === item.day && !(Number(before.shown) > Number(item.shown))) return
    list[at] = before
    list[at - 1] = item
  }
}
