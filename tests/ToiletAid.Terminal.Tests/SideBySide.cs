using Xunit.Sdk;
using Xunit.v3;

// These tests wait for programs most of the time, so more of them run at once than there are cores.
[assembly: Parallelization(Mode = ParallelMode.All, MaxThreads = 5)]
