using System.Reflection;
using BenchmarkDotNet.Running;
using ToiletAid.Benchmarks;
using ToiletAid.Benchmarks.Estimates;
using ToiletAid.Benchmarks.Interviews;
using ToiletAid.Benchmarks.Teaching;

if (args is ["rerank", var folder])
{
    RerankPercentiles.Run(folder);
    return;
}

if (args is ["compare", var shared])
{
    ReferenceComparison.Run(shared);
    return;
}

if (args is ["reach", ..])
{
    ReachJudge.Run(Arguments.Read(args.AsSpan(1)));
    return;
}

if (args is ["interviews", ..])
{
    InterviewJudge.Run(Arguments.Read(args.AsSpan(1)));
    return;
}

if (args is ["estimates", ..])
{
    EstimateSweep.Run(Arguments.Read(args.AsSpan(1)));
    return;
}

if (args is ["teaching", ..])
{
    TeachingCount.Run(Arguments.Read(args.AsSpan(1)));
    return;
}

BenchmarkSwitcher.FromAssembly(Assembly.GetExecutingAssembly()).Run(args);
