/** What an address may hold that no field is, or no choice offers. */
export const schemaWords = {
  unknownField: (key: string) =>
    `“${key}” is no field this version of the app knows; take a newer version, or leave it out`,
  unknownOption: (field: string, value: string, offered: readonly string[]) =>
    `${field}: “${value}” is no choice this version of the app knows; choose ${offered.join('; ')}`,
};
