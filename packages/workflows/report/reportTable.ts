/** A table of the report, all its figures printed: what it shows is the same wherever it is laid out. */
export interface ReportTable {
  readonly columns: readonly { readonly head: string; readonly align?: 'right' }[];
  readonly rows: readonly (readonly string[])[];
}
