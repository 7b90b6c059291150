/* The cast of mechanics/cast_kernel.py once more, line by line, to measure that file's compiler by.
 *
 *     cc -O3 -march=native -shared -fPIC -o cast.so cast.c -lm
 *
 * The same steps, events and sums in the same order. No trace is written: the speed table does not need one.
 */
#include <math.h>
#include <string.h>

#define GRAVITY 9.80665
#define STEPS 100000
#define LONGEST_STEP 1.0
#define CREEP 0.01
#define SOFT_TOUCH 1e-3
#define NO_TOUCH (-1e-9)

enum {
    MASS, EASE, AIR, VX, VY, HEIGHT, WIND, SKIN, LINE, FALL, TOP, FLOOR, BULK, BARE, LENGTH, B_CONST, B_VISC,
    B_QUAD, WINDAGE, MAGNET, BLOCKS, ENGAGE, GUIDE, PRESS, LIMIT, HOLD, LIP, RTOL, FIRST, FIXED, COLUMNS
};
enum {
    DISTANCE, TIME, ARC, OUT, PEAK_SPIN, PEAK_SLACK, E_BRAKE, E_BEARING, E_WINDAGE, E_GUIDE, E_THUMB,
    E_PAYLOAD, E_LINE, E_SLACK, E_JOIN, E_START, E_END, STATUS, RESULTS
};
enum { LANDED, OUT_OF_LINE, HUNG, GAVE_UP };
enum { TIGHT, HELD, SLACK, STOPPED, FREE };
enum { LANDS, RUNS_OUT, CATCHES, THUMB, STOPS, BRAKE, LOOSENS, TIGHTENS, KINDS };
enum { NOTHING = -1 };
enum {
    Y = 32, NEW = 40, MID = 48, K = 56, P = 112, NEED = 168, ENERGY = 176, SPARE = 184, WATCH = 200, R = 208,
    MODE = 228, BRAKED = 229, PRESSED = 230, HOLDS = 231, ROOM = 232
};

static double square(double x) { return x * x; }
static double larger(double a, double b) { return a > b ? a : b; }
static double smaller(double a, double b) { return a < b ? a : b; }

static double spool(const double *b, int y, double *inertia)
{
    double rr = larger(b[TOP] - b[FALL] * (b[y + 4] + b[y + 6]), 0.5 * b[FLOOR]);
    *inertia = b[BARE] + b[BULK] * larger(rr * rr - b[FLOOR] * b[FLOOR], 0.0);
    return sqrt(rr);
}

static double slope(double *b, int y, int g, int w)
{
    double mode = b[MODE], vx = b[y + 2], vy = b[y + 3], s = b[y + 4];
    double v = larger(sqrt(vx * vx + vy * vy), 1e-12);
    double per_v = 1.0 / v;
    double tx = vx * per_v, ty = vy * per_v;
    double rx = vx - b[WIND];
    double pull = b[AIR] * sqrt(rx * rx + vy * vy);
    double ax = -pull * rx * b[EASE], ay = -GRAVITY - pull * vy * b[EASE];
    double along = ax * tx + ay * ty;
    double u = v - b[WIND] * (s > 1e-9 ? b[y] / s : tx);
    double skin = b[SKIN] * s * u * fabs(u);
    double lift = b[LINE] * GRAVITY * (b[y + 1] - b[HEIGHT]);
    double force = b[MASS] * along - skin - lift;
    double mass = b[MASS] + b[LINE] * s;
    double inertia, r = spool(b, y, &inertia);
    double per_r = 1.0 / r;
    double spin = mode <= HELD ? v * per_r : (mode == SLACK ? larger(b[y + 5], 0.0) : 0.0);
    double brake = b[MAGNET] * spin + b[BRAKED] * b[BLOCKS] * (spin * spin - b[ENGAGE] * b[ENGAGE]);
    double bearing = b[B_CONST] + spin * (b[B_VISC] + spin * b[B_QUAD]);
    double air = b[WINDAGE] * spin * sqrt(spin);
    double torque = brake + bearing + air + b[GUIDE];
    double lip = 0, df = 0, dw = 0, need = 0, thumb = 0, fluff = 0, dv;
    if (mode <= HELD) {
        double hurry = 0.5 * b[FALL] * v * v * per_r * per_r;
        if (mode == TIGHT)
            dv = (force - (inertia * hurry * per_r + torque) * per_r) / (mass + inertia * per_r * per_r);
        else
            dv = force / mass;
        dw = (dv + hurry) * per_r;
        need = inertia * dw + torque;
        thumb = mode == HELD ? -need : 0.0;
    } else if (mode == FREE) {
        lip = b[LIP];
        need = lip + b[LINE] * v * v;
        dv = (force - need) / mass;
        fluff = 0.5 * b[LINE] * v * v * v;
    } else {
        dv = force / mass;
        double run = r * spin;
        df = run - v;
        fluff = 0.5 * b[LINE] * (run * run * run - v * v * v);
        if (mode == SLACK) {
            thumb = b[PRESSED] * b[PRESS];
            dw = -(torque + thumb) / larger(inertia, 1e-300);
        }
    }
    b[g] = vx, b[g + 1] = vy, b[g + 4] = v, b[g + 5] = dw, b[g + 6] = df, b[g + 7] = lift * v;
    b[g + 2] = ax + (dv - along) * tx, b[g + 3] = ay + (dv - along) * ty;
    b[w] = spin * brake, b[w + 1] = spin * bearing, b[w + 2] = spin * air, b[w + 3] = spin * b[GUIDE] + lip * v;
    b[w + 4] = spin * thumb, b[w + 5] = pull * (rx * vx + vy * vy), b[w + 6] = skin * v, b[w + 7] = fluff;
    return need;
}

static double try_step(double *b, double h)
{
    double *y = b + Y, *m = b + MID, *n = b + NEW, *need = b + NEED, *k1 = b + K, *k2 = k1 + 8, *k3 = k1 + 16;
    double *k4 = k1 + 24, *k5 = k1 + 32, *k6 = k1 + 40, *k7 = k1 + 48, a, e, total = 0.0;
    for (int i = 0; i < 8; i++)
        m[i] = y[i] + h * (1.0 / 5 * k1[i]);
    need[1] = slope(b, MID, K + 8, P + 8);
    for (int i = 0; i < 8; i++)
        m[i] = y[i] + h * (3.0 / 40 * k1[i] + 9.0 / 40 * k2[i]);
    need[2] = slope(b, MID, K + 16, P + 16);
    for (int i = 0; i < 8; i++)
        m[i] = y[i] + h * (44.0 / 45 * k1[i] - 56.0 / 15 * k2[i] + 32.0 / 9 * k3[i]);
    need[3] = slope(b, MID, K + 24, P + 24);
    for (int i = 0; i < 8; i++) {
        a = 19372.0 / 6561 * k1[i] - 25360.0 / 2187 * k2[i] + 64448.0 / 6561 * k3[i];
        m[i] = y[i] + h * (a - 212.0 / 729 * k4[i]);
    }
    need[4] = slope(b, MID, K + 32, P + 32);
    for (int i = 0; i < 8; i++) {
        a = 9017.0 / 3168 * k1[i] - 355.0 / 33 * k2[i] + 46732.0 / 5247 * k3[i];
        m[i] = y[i] + h * (a + 49.0 / 176 * k4[i] - 5103.0 / 18656 * k5[i]);
    }
    need[5] = slope(b, MID, K + 40, P + 40);
    for (int i = 0; i < 8; i++) {
        a = 35.0 / 384 * k1[i] + 500.0 / 1113 * k3[i] + 125.0 / 192 * k4[i];
        n[i] = y[i] + h * (a - 2187.0 / 6784 * k5[i] + 11.0 / 84 * k6[i]);
    }
    need[6] = slope(b, NEW, K + 48, P + 48);
    for (int i = 0; i < 8; i++) {
        e = 71.0 / 57600 * k1[i] - 71.0 / 16695 * k3[i] + 71.0 / 1920 * k4[i];
        e = h * (e - 17253.0 / 339200 * k5[i] + 22.0 / 525 * k6[i] - 1.0 / 40 * k7[i]);
        e = e / (b[RTOL] * (1.0 + larger(fabs(y[i]), fabs(n[i]))));
        total += e * e;
    }
    return sqrt(total / 8.0);
}

static double at(const double *b, double h, double t, int i)
{
    if (t >= 1.0)
        return b[NEW + i];
    double rise = b[NEW + i] - b[Y + i];
    double bend = h * b[K + i] - rise;
    double twist = rise - h * b[K + 48 + i] - bend;
    double d = -12715105075.0 / 11282082432 * b[K + i] + 87487479700.0 / 32700410799 * b[K + 16 + i];
    d += -10690763975.0 / 1880347072 * b[K + 24 + i] + 701980252875.0 / 199316789632 * b[K + 32 + i];
    d += -1453857185.0 / 822651844 * b[K + 40 + i] + 69997945.0 / 29380423 * b[K + 48 + i];
    return b[Y + i] + t * (rise + (1.0 - t) * (bend + t * (twist + (1.0 - t) * h * d)));
}

static double gauge(int kind, double *b, double h, double t)
{
    switch (kind) {
    case LANDS: return at(b, h, t, 1);
    case RUNS_OUT: return b[LENGTH] - at(b, h, t, 4) - at(b, h, t, 6);
    case CATCHES: return at(b, h, t, 6);
    case THUMB: return (1.0 - 2.0 * b[PRESSED]) * (b[LIMIT] - at(b, h, t, 6));
    case STOPS: return at(b, h, t, 5);
    case BRAKE: return (1.0 - 2.0 * b[BRAKED]) * (b[ENGAGE] - at(b, h, t, 5));
    }
    for (int i = 0; i < 8; i++)
        b[MID + i] = at(b, h, t, i);
    double need = slope(b, MID, SPARE, SPARE + 8);
    return kind == TIGHTENS ? -need : need + (b[MODE] == HELD ? b[HOLDS] : 0.0);
}

static double where(int kind, double *b, double h, double end)
{
    double low = 0.0, high = end, at_low = gauge(kind, b, h, low), at_high = gauge(kind, b, h, high);
    int side = 0;
    for (int n = 0; n < 80; n++) {
        double t = at_low > 0.0 ? high - at_high * (high - low) / (at_high - at_low) : 0.5 * (low + high);
        if (high - low < 1e-13 || t <= low || t >= high)
            break;
        double value = gauge(kind, b, h, t);
        if (fabs(value) <= 1e-14 * h)
            return t;
        if (value > 0.0)
            low = t, at_low = value, at_high *= side > 0 ? 0.5 : 1.0, side = 1;
        else
            high = t, at_high = value, at_low *= side < 0 ? 0.5 : 1.0, side = -1;
    }
    return high;
}

static double turn(const double *b, double h, int i, double sign)
{
    double before = sign * b[K + i], after = sign * b[K + 48 + i];
    if (before <= 0.0 || after >= 0.0)
        return -1.0;
    double mean = sign * (b[NEW + i] - b[Y + i]) / h;
    double a = 3.0 * (before + after) - 6.0 * mean;
    double half = 3.0 * mean - 2.0 * before - after;
    double root = sqrt(larger(half * half - a * before, 0.0));
    double t = half < 0.0 ? before / (root - half) : -(half + root) / a;
    return t > 0.0 && t < 1.0 ? t : 0.5;
}

static double end_of(int kind, double *b, double h)
{
    double t = -1.0;
    if (kind == CATCHES) {
        t = turn(b, h, 6, -1.0);
    } else if (kind == THUMB) {
        t = turn(b, h, 6, 1.0 - 2.0 * b[PRESSED]);
    } else if (kind >= LOOSENS) {
        double sign = kind == LOOSENS ? 1.0 : -1.0;
        double offset = b[MODE] == HELD && kind == LOOSENS ? b[HOLDS] : 0.0;
        if (sign * b[NEED + 6] + offset < 0.0)
            return 1.0;
        for (int j = 2; j < 5; j++)
            if (sign * b[NEED + j] + offset < 0.0)
                t = j == 2 ? 0.3 : (j == 3 ? 0.8 : 8.0 / 9);
    }
    if (kind < LOOSENS && gauge(kind, b, h, 1.0) < 0.0)
        return 1.0;
    return t > 0.0 && gauge(kind, b, h, t) < 0.0 ? t : -1.0;
}

static int first(double *b, double h, int kinds, double *share)
{
    int kind = NOTHING;
    *share = 1.0;
    for (int e = 0; e < kinds; e++) {
        double end = b[WATCH + e] > 0.0 ? end_of(e, b, h) : -1.0;
        if (end > 0.0) {
            double t = where(e, b, h, end);
            if (kind == NOTHING || t < *share)
                kind = e, *share = t;
        }
    }
    return kind;
}

static void watch(double *b)
{
    b[NEED] = slope(b, Y, K, P);
    double mode = b[MODE];
    b[WATCH + LANDS] = b[WATCH + RUNS_OUT] = 1.0;
    b[WATCH + CATCHES] = mode == SLACK || mode == STOPPED;
    b[WATCH + THUMB] = mode == SLACK && b[LIMIT] > 0.0 && b[LIMIT] < 1e300 && b[PRESS] > 0.0;
    b[WATCH + STOPS] = mode == SLACK;
    b[WATCH + BRAKE] = mode <= SLACK && b[BLOCKS] > 0.0 && b[ENGAGE] > 0.0;
    b[WATCH + LOOSENS] = mode <= HELD;
    b[WATCH + TIGHTENS] = mode == HELD;
}

static void settle(double *b)
{
    double inertia;
    b[MODE] = TIGHT, b[PRESSED] = 0.0, b[HOLDS] = b[HOLD];
    b[Y + 5] = sqrt(square(b[Y + 2]) + square(b[Y + 3])) / spool(b, Y, &inertia);
    b[BRAKED] = b[ENGAGE] <= 0.0 || b[Y + 5] > b[ENGAGE];
    if (slope(b, Y, K, P) < 0.0) {
        b[MODE] = HELD;
        if (slope(b, Y, K, P) + b[HOLD] < 0.0)
            b[MODE] = SLACK, b[PRESSED] = b[LIMIT] <= 0.0;
    }
}

static void change(int kind, double *b)
{
    double v = sqrt(square(b[Y + 2]) + square(b[Y + 3]));
    double inertia, r = spool(b, Y, &inertia);
    double ahead = r * b[Y + 5] - v;
    if (kind == CATCHES) {
        double mass = b[MASS] + b[LINE] * b[Y + 4], turning = inertia / (r * r);
        double share = turning / (mass + turning);
        b[R + E_JOIN] += 0.5 * mass * share * ahead * ahead;
        b[Y + 2] *= 1.0 + share * ahead / v, b[Y + 3] *= 1.0 + share * ahead / v, b[Y + 6] = 0.0;
        settle(b);
    } else if (kind == THUMB) {
        b[PRESSED] = 1.0 - b[PRESSED];
        if (ahead > NO_TOUCH * v && ahead < SOFT_TOUCH * v) {
            b[MODE] = HELD;
            double need = slope(b, Y, SPARE, SPARE + 8);
            if (need < 0.0 && need + b[PRESS] > 0.0) {
                b[R + E_THUMB] += 0.5 * inertia * (square(b[Y + 5]) - square(v / r));
                b[Y + 5] = v / r, b[HOLDS] = b[PRESS];
            } else {
                b[MODE] = SLACK;
            }
        }
    } else if (kind == STOPS) {
        b[MODE] = STOPPED, b[Y + 5] = 0.0;
    } else if (kind == BRAKE) {
        b[BRAKED] = 1.0 - b[BRAKED];
    } else if (kind == TIGHTENS) {
        b[MODE] = b[Y + 6] > 0.0 ? SLACK : TIGHT, b[PRESSED] = 0.0;
    } else if (b[MODE] == TIGHT && b[HOLDS] > 0.0) {
        b[MODE] = HELD;
    } else {
        b[PRESSED] = b[MODE] == HELD || b[LIMIT] <= 0.0, b[MODE] = SLACK;
    }
    watch(b);
}

static void begin(double *b)
{
    double inertia;
    memset(b + Y, 0, (ROOM - Y) * sizeof(double));
    b[Y + 1] = b[HEIGHT], b[Y + 2] = b[VX], b[Y + 3] = b[VY], b[MODE] = FREE;
    if (b[FIXED] == 0.0)
        settle(b);
    watch(b);
    b[R + PEAK_SPIN] = b[Y + 5];
    spool(b, Y, &inertia);
    double turning = 0.5 * inertia * square(b[Y + 5]);
    b[R + E_START] = 0.5 * b[MASS] * (square(b[VX]) + square(b[VY])) + turning + b[MASS] * GRAVITY * b[HEIGHT];
}

static void collect(double *b, double h)
{
    double inertia;
    for (int i = 0; i < 8; i++) {
        double w = 35.0 / 384 * b[P + i] + 500.0 / 1113 * b[P + 16 + i] + 125.0 / 192 * b[P + 24 + i];
        b[ENERGY + i] += h * (w - 2187.0 / 6784 * b[P + 32 + i] + 11.0 / 84 * b[P + 40 + i]);
    }
    for (int i = 5; i < (b[MODE] != FREE ? 7 : 5); i++) {
        double peak = b[R + PEAK_SPIN + i - 5], top = turn(b, h, i, 1.0);
        if (top > 0.0)
            peak = larger(peak, at(b, h, top, i));
        b[R + PEAK_SPIN + i - 5] = larger(peak, b[NEW + i]);
    }
    memcpy(b + Y, b + NEW, 8 * sizeof(double));
    b[Y + 6] = larger(b[Y + 6], 0.0);
    if (b[MODE] <= HELD)
        b[Y + 5] = sqrt(square(b[Y + 2]) + square(b[Y + 3])) / spool(b, Y, &inertia);
}

static void finish(int status, double t, double *b)
{
    double inertia;
    if (status == LANDED && b[Y + 3] < 0.0)
        b[Y] -= b[Y + 1] * b[Y + 2] / b[Y + 3], b[Y + 1] = 0.0;
    b[R + DISTANCE] = b[Y], b[R + TIME] = t, b[R + ARC] = b[Y + 4], b[R + OUT] = b[Y + 4] + b[Y + 6];
    b[R + STATUS] = status;
    for (int i = 0; i < 8; i++)
        b[R + E_BRAKE + i] += b[ENERGY + i];
    spool(b, Y, &inertia);
    double flying = 0.5 * (b[MASS] + b[LINE] * b[Y + 4]) * (square(b[Y + 2]) + square(b[Y + 3]));
    double turning = 0.5 * inertia * square(b[Y + 5]);
    b[R + E_END] = flying + turning + b[MASS] * GRAVITY * b[Y + 1] + b[Y + 7];
}

static void one(double *b)
{
    begin(b);
    double t = 0.0, share, inertia;
    double h = b[FIRST] * sqrt((square(b[VX]) + square(b[VY])) / (square(b[K + 2]) + square(b[K + 3])));
    h = smaller(h, LONGEST_STEP);
    int rush = 0, status = b[HEIGHT] <= 0.0 && b[VY] <= 0.0 ? LANDED : GAVE_UP;
    for (long n = 0; n < (status == GAVE_UP ? STEPS : 0); n++) {
        double error = try_step(b, h);
        double quarter = sqrt(sqrt(larger(error, 1e-8)));
        double factor = smaller(larger(0.9 * sqrt(sqrt(quarter)) / quarter, 0.2), 5.0);
        if (!(error <= 1.0)) {
            h *= error > 1.0 ? factor : 0.2;
            continue;
        }
        int kind = first(b, h, rush < 5 ? KINDS : CATCHES, &share);
        double taken = share * h;
        if (share < 1.0)
            try_step(b, taken);
        collect(b, taken);
        t += taken;
        if (kind == LANDS || kind == RUNS_OUT) {
            status = kind;
            break;
        }
        rush = kind != NOTHING && taken < 1e-9 ? rush + 1 : 0;
        if (kind == NOTHING) {
            memcpy(b + K, b + K + 48, 8 * sizeof(double));
            memcpy(b + P, b + P + 48, 8 * sizeof(double));
            b[NEED] = b[NEED + 6];
        } else {
            change(kind, b);
        }
        if (square(b[Y + 2]) + square(b[Y + 3]) < CREEP * CREEP && (b[MODE] == TIGHT || b[MODE] == FREE)) {
            double least = b[MODE] == FREE ? b[LIP] : (b[B_CONST] + b[GUIDE]) / spool(b, Y, &inertia);
            if (square(b[K + 2]) + square(b[K + 3]) < square(0.05 * GRAVITY) || least >= b[MASS] * GRAVITY) {
                status = HUNG;
                break;
            }
        }
        h = smaller(h * factor, rush < 5 ? LONGEST_STEP : 1e-3);
    }
    finish(status, t, b);
}

void fly(const double *cases, double *results, long long count)
{
    double work[ROOM];
    for (long long i = 0; i < count; i++) {
        memcpy(work, cases + i * COLUMNS, COLUMNS * sizeof(double));
        one(work);
        memcpy(results + i * RESULTS, work + R, RESULTS * sizeof(double));
    }
}
