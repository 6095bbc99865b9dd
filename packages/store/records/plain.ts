/** A row's value as a member that is left out where the column is null. */
export const present = <Name extends string, Value>(
  name: Name,
  value: Value | null | undefined,
): { readonly [N in Name]?: Value } => {
  const member: { [N in Name]?: Value } = {};
  if (value !== null && value !== undefined) member[name] = value;
  return member;
};
