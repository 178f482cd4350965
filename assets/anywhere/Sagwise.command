#!/bin/sh
# Opens the window from Finder.
exec "$(CDPATH='' cd -- "$(dirname "$0")" && pwd -P)/sagwise" "$@"
