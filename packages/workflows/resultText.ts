/** A result as it leaves, of commands and API alike: JSON two spaces deep, with a line end. */
export const resultText = (result: unknown): string => `${JSON.stringify(result, null, 2)}\n`;
