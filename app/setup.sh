# setup.sh  What app/run, tests/run and .ci/run share: packages and the build. Sourced, not run.
# All it says goes to standard error, so that a headless verb's output stays clean.

top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
build=${TENTHDAY_BUILD:-$top/build}

# Debian 12 names. To run, to test, and to check the style. zlib: CBC wants it linked and does not
# bring it along.
run_packages="g++ cmake ninja-build pkg-config qt6-base-dev qt6-svg-dev qt6-tools-dev
    qt6-tools-dev-tools qt6-l10n-tools libqt6sql6-sqlite libhowardhinnant-date-dev
    libtbb-dev libmimalloc-dev
    coinor-libcbc-dev zlib1g-dev
    fonts-inter fonts-dejavu-core"
test_packages="libgtest-dev libbenchmark-dev librapidcheck-dev libboost-math-dev libical-dev
    libglpk-dev
    poppler-utils locales sqlite3 tzdata desktop-file-utils appstream"
check_packages="clang-format-14 clang-tidy-16 git"
test_locales="de_DE ar_EG fa_IR tr_TR th_TH"

say() { echo "$*" >&2; }
stop() { say "$*"; exit 1; }

# Runs a command as root: as it is, or through sudo.
as_root() {
    if [ "$(id -u)" = 0 ]; then "$@"; else sudo "$@"; fi
}
can_be_root() { [ "$(id -u)" = 0 ] || command -v sudo >/dev/null; }

is_debian_12() {
    [ -r /etc/os-release ] && (. /etc/os-release && [ "$ID" = debian ] && [ "${VERSION_ID:-}" = 12 ])
}

# Names the packages, of those given, that are not installed.
missing_packages() {
    local package
    for package in "$@"; do
        dpkg-query -W -f='${db:Status-Status}' "$package" 2>/dev/null | grep -qx installed ||
            echo "$package"
    done
}

# On other systems: what can be seen to be missing. CMake names the rest.
missing_tools() {
    local tool
    for tool in g++ cmake ninja pkg-config; do
        command -v "$tool" >/dev/null || echo "$tool"
    done
    echo '#include <date/date.h>' | g++ -std=c++20 -fsyntax-only -x c++ - 2>/dev/null ||
        echo "date (the calendar library by Howard Hinnant)"
    echo '#include <mimalloc.h>' | g++ -fsyntax-only -x c++ - 2>/dev/null ||
        echo "mimalloc (the allocator)"
    pkg-config --exists tbb || echo "oneTBB (work on all cores)"
    pkg-config --exists cbc || echo "CBC (the solver for whole numbers, COIN-OR)"
}

# Installs, on Debian 12, those of the packages that are missing; elsewhere names them and stops.
need() {
    local missing
    if ! is_debian_12; then
        missing=$(missing_tools | paste -sd, | sed 's/,/, /g')
        [ -z "$missing" ] || stop "This is not Debian 12, so nothing is installed for you. Missing:" \
            "$missing. Needed: a C++20 compiler, CMake 3.25, Ninja, Qt 6.4 with SVG, SQLite and" \
            "translation tools, date, oneTBB, mimalloc and CBC; to test also GoogleTest, Google" \
            "Benchmark, Boost.Math, libical and GLPK."
        return
    fi
    missing=$(missing_packages "$@" | paste -sd' ')
    [ -n "$missing" ] || return 0
    can_be_root || stop "Missing: $missing. Install them as root: apt-get install $missing"
    say "Installing what is missing: $missing"
    install_packages $missing
}

install_packages() {
    local log
    log=$(mktemp)
    if ! { as_root apt-get update -qq &&
        as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends \
            -o DPkg::Lock::Timeout=300 -o Dpkg::Use-Pty=0 "$@"; } >"$log" 2>&1 </dev/null; then
        tail -20 "$log" >&2
        rm -f "$log"
        stop "Could not install: $*"
    fi
    rm -f "$log"
}

# The languages in which the program must give the same bytes; made where they are missing.
need_locales() {
    local name
    for name in $test_locales; do
        [ "$(LC_ALL=$name.UTF-8 locale charmap 2>/dev/null)" = UTF-8 ] && continue
        can_be_root || stop "Missing: the locale $name.UTF-8. Make it as root:" \
            "localedef -i $name -f UTF-8 $name.UTF-8"
        say "Making the locale $name.UTF-8"
        as_root localedef -i "$name" -f UTF-8 "$name.UTF-8" >&2 || true
        [ "$(LC_ALL=$name.UTF-8 locale charmap 2>/dev/null)" = UTF-8 ] ||
            stop "The locale $name.UTF-8 could not be made"
    done
}

# configure DIR [OPTION...]: a build directory with the given CMake options.
configure() {
    local dir=$1 launcher=
    shift
    ! command -v ccache >/dev/null || launcher=-DCMAKE_CXX_COMPILER_LAUNCHER=ccache
    cmake -S "$top" -B "$dir" -G Ninja $launcher "$@" --log-level=WARNING >&2 ||
        stop "The build could not be configured: see above"
}

# build_targets DIR TARGET...: shows progress on the first build, is quiet when little is to be done.
build_targets() {
    local dir=$1 quiet=
    shift
    [ ! -e "$dir/.built" ] || quiet=--quiet
    ninja -C "$dir" $quiet "$@" >&2 || stop "The build failed: see above"
    touch "$dir/.built"
}
