/**
 * A text whose figures hold together where lines are broken: no unit is parted from its number, and no unit in two.
 * The signs that do this are not seen.
 */
export const joined = (text: string): string =>
  text
    .replace(/(?<=\d) (?=[\p{L}%°µ±×])/gu, '\u00a0')
    .replace(/(?<=[±÷]) (?=\d)/g, '\u00a0')
    .replace(/(?<=×\/)(?=÷)/g, '\u2060')
    .replace(/(?<=US) (?=gal|fl)/g, '\u00a0')
    .replace(/(?<=fl) (?=oz)/g, '\u00a0')
    .replace(/(?<=(?:gal|L|mm|cm|in|ft|g|m)\/)(?=[a-z])/g, '\u2060');

/** Every text in plain data, however deep, as a function gives it. */
export const throughout = <Data>(data: Data, written: (text: string) => string): Data =>
  JSON.parse(
    JSON.stringify(data, (_, value: unknown) => (typeof value === 'string' ? written(value) : value)),
  ) as Data;
