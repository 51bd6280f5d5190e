import openapiTS, { astToString } from "openapi-typescript";

/** Return the types of an OpenAPI document, as src/api/types.ts holds them. */
export async function typesOf(text) {
  const tree = await openapiTS(JSON.parse(text));
  return `// Made from openapi.json by \`npm run types\`; do not edit.\n${astToString(tree)}`;
}
