# Pilehand with its book in a volume:
#   docker build -t pilehand .
#   docker run -d --restart unless-stopped --init -v pilehand:/data -e TELEGRAM_TOKEN=… -e PILEHAND_ZONE=America/Chicago pilehand
# Without a token it opens the console: add -it instead of -d.

# Both stages must be of one major version of Node: the SQLite addon is compiled for it.
FROM node:24-bookworm-slim AS build
RUN apt-get update \
  && apt-get install -y --no-install-recommends python3 make g++ \
  && rm -rf /var/lib/apt/lists/*
# Node's headers are in the image; without this node-gyp would download them again.
ENV npm_package_config_node_gyp_nodedir=/usr/local
WORKDIR /app
COPY package.json package-lock.json ./
RUN npm ci --no-audit --no-fund
COPY . .
RUN npm run build \
  && npm prune --omit=dev --no-audit --no-fund \
  && mkdir -p shared

FROM node:24-bookworm-slim
ENV NODE_ENV=production PILEHAND_DATA=/data
# The embedded recogniser of voice notes, with its US English model, and the voice for spoken answers: about 45 MB.
RUN apt-get update \
  && apt-get install -y --no-install-recommends pocketsphinx pocketsphinx-en-us espeak-ng opus-tools \
  && rm -rf /var/lib/apt/lists/*
WORKDIR /app
COPY --from=build /app/package.json ./
COPY --from=build /app/node_modules ./node_modules
COPY --from=build /app/dist ./dist
COPY --from=build /app/prompts ./prompts
COPY --from=build /app/shared ./shared
# The folder must belong to the user before it becomes a volume, or the user can't write there.
RUN mkdir -p /data && chown node:node /data
VOLUME /data
USER node
# No health check: it listens on no port, and when it can't go on it says why and ends, which is for the restart policy.
CMD ["node", "--max-semi-space-size=4", "dist/main.js"]
