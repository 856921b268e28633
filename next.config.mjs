/** Types are checked by `npm test` (a second check here would only slow the first start). */
const config = {
  typescript: { ignoreBuildErrors: true },
  poweredByHeader: false,
  devIndicators: false,
};
export default config;
