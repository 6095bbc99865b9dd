/** The day that it is where the browser stands, ISO. */
export const today = (): string => new Date().toLocaleDateString('en-CA');
