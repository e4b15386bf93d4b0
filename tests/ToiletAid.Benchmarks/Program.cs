using System.Reflection;
using BenchmarkDotNet.Running;
using ToiletAid.Benchmarks;

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

BenchmarkSwitcher.FromAssembly(Assembly.GetExecutingAssembly()).Run(args);
