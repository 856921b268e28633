-- CreateTable
CREATE TABLE "OwnRecipe" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "recipeId" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "retired" BOOLEAN NOT NULL DEFAULT false,
    "figures" JSONB NOT NULL,

    CONSTRAINT "OwnRecipe_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "OwnRecipe_placeId_code_version_key" ON "OwnRecipe"("placeId", "code", "version");

-- AddForeignKey
ALTER TABLE "OwnRecipe" ADD CONSTRAINT "OwnRecipe_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
