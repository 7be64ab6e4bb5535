/* bench/empty.c: what any program costs.
 * SPDX-License-Identifier: MIT */
int main(void)
{
    return 0;
}
