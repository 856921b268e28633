-- CreateSchema
CREATE SCHEMA IF NOT EXISTS "public";

-- CreateTable
CREATE TABLE "Place" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "demo" BOOLEAN NOT NULL DEFAULT false,
    "day" TEXT,
    "timeZone" TEXT NOT NULL DEFAULT 'UTC',
    "settings" JSONB NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Place_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Kitchen" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "altitudeM" INTEGER NOT NULL,
    "main" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "Kitchen_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Burner" (
    "id" TEXT NOT NULL,
    "kitchenId" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "watts" INTEGER NOT NULL,
    "outdoors" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "Burner_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Pan" (
    "id" TEXT NOT NULL,
    "kitchenId" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "ml" INTEGER NOT NULL,
    "diameterMm" INTEGER,
    "maxFillPercent" INTEGER,
    "evapGPerMin" INTEGER,

    CONSTRAINT "Pan_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Canner" (
    "id" TEXT NOT NULL,
    "kitchenId" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "method" TEXT NOT NULL DEFAULT 'boiling-water',
    "loads" JSONB NOT NULL,
    "heatUpS" INTEGER NOT NULL,
    "reheatS" INTEGER NOT NULL,

    CONSTRAINT "Canner_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Dryer" (
    "id" TEXT NOT NULL,
    "kitchenId" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "trays" INTEGER NOT NULL,
    "trayCm2" INTEGER NOT NULL,
    "gPerTray" INTEGER NOT NULL,
    "centiC" INTEGER NOT NULL,

    CONSTRAINT "Dryer_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "StoreRoom" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "bays" INTEGER,
    "shelvesPerBay" INTEGER,
    "widthMm" INTEGER,
    "depthMm" INTEGER,
    "clearMm" INTEGER,
    "maxGPerShelf" INTEGER,
    "litres" INTEGER,
    "crates" INTEGER,
    "lowC" INTEGER,
    "highC" INTEGER,

    CONSTRAINT "StoreRoom_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Container" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "tareG" INTEGER NOT NULL,
    "volumeMl" INTEGER NOT NULL,

    CONSTRAINT "Container_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "JarKind" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "size" TEXT,
    "fillMl" INTEGER NOT NULL,
    "pitchMm" INTEGER NOT NULL,
    "heightMm" INTEGER NOT NULL,
    "canning" BOOLEAN NOT NULL DEFAULT true,

    CONSTRAINT "JarKind_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Person" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "can" JSONB NOT NULL,
    "minutes" JSONB NOT NULL,

    CONSTRAINT "Person_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Crop" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "foodId" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "unit" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "gPerUnit" INTEGER NOT NULL,
    "windowFrom" TEXT NOT NULL,
    "windowTo" TEXT NOT NULL,
    "soldPercent" INTEGER NOT NULL DEFAULT 0,
    "eatenPercent" INTEGER NOT NULL DEFAULT 0,
    "cullPercent" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "Crop_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Planting" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "row" TEXT NOT NULL,
    "position" INTEGER,
    "block" TEXT,
    "cropId" TEXT NOT NULL,
    "cultivar" TEXT,
    "rootstock" TEXT,
    "planted" INTEGER,
    "count" INTEGER NOT NULL DEFAULT 1,
    "unit" TEXT NOT NULL DEFAULT 'tree',

    CONSTRAINT "Planting_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Lot" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "unit" TEXT NOT NULL,
    "item" TEXT,
    "cropId" TEXT,
    "foodId" TEXT,
    "recipeId" TEXT,
    "grade" TEXT,
    "groundFall" BOOLEAN NOT NULL DEFAULT false,
    "row" TEXT,
    "roomId" TEXT,
    "address" TEXT,
    "batchId" TEXT,
    "parentActId" TEXT NOT NULL,
    "madeOn" TEXT NOT NULL,
    "since" TIMESTAMP(3) NOT NULL,
    "bestBefore" TEXT,
    "lockedUntil" TEXT,
    "process" TEXT,
    "seal" TEXT,
    "hold" TEXT,
    "household" BOOLEAN NOT NULL DEFAULT true,
    "onHand" INTEGER NOT NULL DEFAULT 0,
    "flags" JSONB NOT NULL,
    "details" JSONB NOT NULL,

    CONSTRAINT "Lot_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Act" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "at" TIMESTAMP(3) NOT NULL,
    "enteredAt" TIMESTAMP(3) NOT NULL,
    "person" TEXT,
    "device" TEXT,
    "note" TEXT,
    "payload" JSONB NOT NULL,
    "outcome" JSONB NOT NULL,
    "corrects" TEXT,

    CONSTRAINT "Act_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Movement" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "actId" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "seq" INTEGER NOT NULL,
    "fromLotId" TEXT,
    "fromSink" TEXT,
    "toLotId" TEXT,
    "toSink" TEXT,
    "qty" INTEGER NOT NULL,
    "grams" INTEGER,
    "piece" INTEGER,

    CONSTRAINT "Movement_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Batch" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "recipeId" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "kitchenId" TEXT NOT NULL,
    "panCode" TEXT,
    "state" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "startedAt" TIMESTAMP(3),
    "filledAt" TIMESTAMP(3),
    "outAt" TIMESTAMP(3),
    "formulaVersion" TEXT NOT NULL,
    "inputs" JSONB NOT NULL,
    "result" JSONB NOT NULL,
    "log" JSONB NOT NULL,

    CONSTRAINT "Batch_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Reading" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "batchId" TEXT,
    "kitchenId" TEXT,
    "actId" TEXT,
    "kind" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "at" TIMESTAMP(3) NOT NULL,
    "value" INTEGER NOT NULL,
    "unit" TEXT NOT NULL,
    "instrument" TEXT,
    "note" TEXT,

    CONSTRAINT "Reading_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Plan" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL,
    "state" TEXT NOT NULL,
    "options" JSONB NOT NULL,
    "snapshot" JSONB NOT NULL,
    "result" JSONB NOT NULL,
    "chosen" BOOLEAN NOT NULL DEFAULT false,
    "solver" TEXT NOT NULL,

    CONSTRAINT "Plan_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Forecast" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL,
    "seed" INTEGER NOT NULL,
    "seasons" INTEGER NOT NULL,
    "modelVersion" TEXT NOT NULL,
    "inputHash" TEXT NOT NULL,
    "summary" JSONB NOT NULL,

    CONSTRAINT "Forecast_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "UseRate" (
    "id" TEXT NOT NULL,
    "placeId" TEXT NOT NULL,
    "line" TEXT NOT NULL,
    "milliPerWeek" INTEGER NOT NULL,
    "source" TEXT NOT NULL,

    CONSTRAINT "UseRate_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "Kitchen_placeId_code_key" ON "Kitchen"("placeId", "code");

-- CreateIndex
CREATE UNIQUE INDEX "Burner_kitchenId_code_key" ON "Burner"("kitchenId", "code");

-- CreateIndex
CREATE UNIQUE INDEX "Pan_kitchenId_code_key" ON "Pan"("kitchenId", "code");

-- CreateIndex
CREATE UNIQUE INDEX "Canner_kitchenId_code_key" ON "Canner"("kitchenId", "code");

-- CreateIndex
CREATE UNIQUE INDEX "Dryer_kitchenId_code_key" ON "Dryer"("kitchenId", "code");

-- CreateIndex
CREATE UNIQUE INDEX "StoreRoom_placeId_code_key" ON "StoreRoom"("placeId", "code");

-- CreateIndex
CREATE UNIQUE INDEX "Container_placeId_code_key" ON "Container"("placeId", "code");

-- CreateIndex
CREATE UNIQUE INDEX "JarKind_placeId_code_key" ON "JarKind"("placeId", "code");

-- CreateIndex
CREATE UNIQUE INDEX "Person_placeId_code_key" ON "Person"("placeId", "code");

-- CreateIndex
CREATE UNIQUE INDEX "Crop_placeId_code_key" ON "Crop"("placeId", "code");

-- CreateIndex
CREATE INDEX "Planting_placeId_row_idx" ON "Planting"("placeId", "row");

-- CreateIndex
CREATE UNIQUE INDEX "Planting_placeId_code_key" ON "Planting"("placeId", "code");

-- CreateIndex
CREATE INDEX "Lot_placeId_kind_madeOn_idx" ON "Lot"("placeId", "kind", "madeOn");

-- CreateIndex
CREATE INDEX "Lot_placeId_kind_onHand_idx" ON "Lot"("placeId", "kind", "onHand");

-- CreateIndex
CREATE INDEX "Lot_batchId_idx" ON "Lot"("batchId");

-- CreateIndex
CREATE UNIQUE INDEX "Lot_placeId_code_key" ON "Lot"("placeId", "code");

-- CreateIndex
CREATE INDEX "Act_placeId_day_idx" ON "Act"("placeId", "day");

-- CreateIndex
CREATE INDEX "Act_placeId_kind_day_idx" ON "Act"("placeId", "kind", "day");

-- CreateIndex
CREATE INDEX "Act_corrects_idx" ON "Act"("corrects");

-- CreateIndex
CREATE INDEX "Movement_placeId_day_idx" ON "Movement"("placeId", "day");

-- CreateIndex
CREATE INDEX "Movement_fromLotId_idx" ON "Movement"("fromLotId");

-- CreateIndex
CREATE INDEX "Movement_toLotId_idx" ON "Movement"("toLotId");

-- CreateIndex
CREATE UNIQUE INDEX "Movement_actId_seq_key" ON "Movement"("actId", "seq");

-- CreateIndex
CREATE INDEX "Batch_placeId_day_idx" ON "Batch"("placeId", "day");

-- CreateIndex
CREATE UNIQUE INDEX "Batch_placeId_code_key" ON "Batch"("placeId", "code");

-- CreateIndex
CREATE INDEX "Reading_placeId_kind_day_idx" ON "Reading"("placeId", "kind", "day");

-- CreateIndex
CREATE INDEX "Reading_batchId_idx" ON "Reading"("batchId");

-- CreateIndex
CREATE INDEX "Plan_placeId_day_idx" ON "Plan"("placeId", "day");

-- CreateIndex
CREATE UNIQUE INDEX "Forecast_placeId_inputHash_key" ON "Forecast"("placeId", "inputHash");

-- CreateIndex
CREATE UNIQUE INDEX "UseRate_placeId_line_key" ON "UseRate"("placeId", "line");

-- AddForeignKey
ALTER TABLE "Kitchen" ADD CONSTRAINT "Kitchen_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Burner" ADD CONSTRAINT "Burner_kitchenId_fkey" FOREIGN KEY ("kitchenId") REFERENCES "Kitchen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Pan" ADD CONSTRAINT "Pan_kitchenId_fkey" FOREIGN KEY ("kitchenId") REFERENCES "Kitchen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Canner" ADD CONSTRAINT "Canner_kitchenId_fkey" FOREIGN KEY ("kitchenId") REFERENCES "Kitchen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Dryer" ADD CONSTRAINT "Dryer_kitchenId_fkey" FOREIGN KEY ("kitchenId") REFERENCES "Kitchen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "StoreRoom" ADD CONSTRAINT "StoreRoom_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Container" ADD CONSTRAINT "Container_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "JarKind" ADD CONSTRAINT "JarKind_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Person" ADD CONSTRAINT "Person_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Crop" ADD CONSTRAINT "Crop_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Planting" ADD CONSTRAINT "Planting_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Planting" ADD CONSTRAINT "Planting_cropId_fkey" FOREIGN KEY ("cropId") REFERENCES "Crop"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lot" ADD CONSTRAINT "Lot_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lot" ADD CONSTRAINT "Lot_cropId_fkey" FOREIGN KEY ("cropId") REFERENCES "Crop"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lot" ADD CONSTRAINT "Lot_roomId_fkey" FOREIGN KEY ("roomId") REFERENCES "StoreRoom"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lot" ADD CONSTRAINT "Lot_batchId_fkey" FOREIGN KEY ("batchId") REFERENCES "Batch"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Act" ADD CONSTRAINT "Act_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Movement" ADD CONSTRAINT "Movement_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Movement" ADD CONSTRAINT "Movement_actId_fkey" FOREIGN KEY ("actId") REFERENCES "Act"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Movement" ADD CONSTRAINT "Movement_fromLotId_fkey" FOREIGN KEY ("fromLotId") REFERENCES "Lot"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Movement" ADD CONSTRAINT "Movement_toLotId_fkey" FOREIGN KEY ("toLotId") REFERENCES "Lot"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Batch" ADD CONSTRAINT "Batch_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Batch" ADD CONSTRAINT "Batch_kitchenId_fkey" FOREIGN KEY ("kitchenId") REFERENCES "Kitchen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Reading" ADD CONSTRAINT "Reading_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Reading" ADD CONSTRAINT "Reading_batchId_fkey" FOREIGN KEY ("batchId") REFERENCES "Batch"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Plan" ADD CONSTRAINT "Plan_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Forecast" ADD CONSTRAINT "Forecast_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "UseRate" ADD CONSTRAINT "UseRate_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
